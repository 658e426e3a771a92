/** Ten minutes of three voices for each coil of a pair. */
import type { ScorePart } from "../../src/calc/music/score";
import { defaultArrangement } from "../../src/design/arrangement";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";
import type { ScoreRequest } from "../../src/workbench/background/scoreJob";

const DURATION = 600;
const NOTE = 0.25;

function part(index: number): ScorePart {
  const notes = Array.from({ length: DURATION / NOTE }, (_, step) => ({
    start: step * NOTE,
    end: (step + 1) * NOTE,
    key: 48 + 5 * index + (step % 7),
    velocity: 0.8,
  }));
  return {
    id: `1:${index + 1}`,
    track: 1,
    channel: index + 1,
    name: "",
    percussion: false,
    notes,
    bends: [],
    levels: [],
  };
}

const parts = [0, 1, 2].map(part);

export const tenMinutes: ScoreRequest = {
  score: { parts, duration: DURATION, tempos: [], reports: [] },
  lanes: parts.map(({ id }) => ({ part: id, coil: "both", transpose: 0, level: 1 })),
  arrangement: defaultArrangement,
  designs: { left: pierHallLeft, right: pierHallRight },
};
