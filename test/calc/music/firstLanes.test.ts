import { describe, expect, it } from "vitest";
import { firstLanes } from "../../../src/calc/music/firstLanes";
import { partSummary } from "../../../src/calc/music/partSummary";
import type { Score, ScorePart } from "../../../src/calc/music/score";

function part(id: string, keys: number[], percussion = false): ScorePart {
  const notes = keys.map((key) => ({ start: 0, end: 1, key, velocity: 1 }));
  return { id, track: 1, channel: 1, name: id, percussion, notes, bends: [], levels: [] };
}

const parts = [part("bass", [36, 40]), part("tune", [72, 76, 79]), part("drums", [38], true)];
const score: Score = { parts, duration: 1, tempos: [], reports: [] };

describe("the first assignment", () => {
  it("sends the highest part left, the next right, percussion nowhere", () => {
    expect(firstLanes(score, true).map((lane) => lane.coil)).toEqual(["right", "left", "none"]);
  });

  it("sends all that sounds left where there is one coil", () => {
    expect(firstLanes(score, false).map((lane) => lane.coil)).toEqual(["left", "left", "none"]);
  });
});

describe("the summary of a part", () => {
  it("tells range and most notes at once", () => {
    expect(partSummary(parts[1])).toEqual({ range: { lowest: 72, highest: 79 }, polyphony: 3 });
    expect(partSummary(part("empty", []))).toEqual({ range: null, polyphony: 0 });
  });
});
