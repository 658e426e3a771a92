/** The marks of the tap's scale. */
import { roundStep } from "../../charts/axis";

export interface RulerMark {
  turn: number;
  /** null for a mark between numbers */
  text: string | null;
}

/** With more turns, only round numbers are marked, without quarters. */
const MOST_TURNS = 40;
const NUMBERS = 8;
/** With more turns, the numbers do not fit. */
const MOST_NUMBERED = 1e5;

/** Marks at every turn and quarter turn; for very many turns, at round numbers. */
export function rulerMarks(turns: number): RulerMark[] {
  if (turns <= MOST_TURNS)
    return Array.from({ length: Math.floor(turns * 4) + 1 }, (_, quarter) => ({
      turn: quarter / 4,
      text: quarter % 4 === 0 ? String(quarter / 4) : null,
    }));
  const step = roundStep(turns / NUMBERS);
  return Array.from({ length: NUMBERS + 1 }, (_, index) => index * step)
    .filter((turn) => turn <= turns)
    .map((turn) => ({ turn, text: turns <= MOST_NUMBERED ? String(turn) : null }));
}
