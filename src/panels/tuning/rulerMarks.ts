/** Where the marks of the tap's scale stand. */
import { roundStep } from "../../charts/axis";

export interface RulerMark {
  turn: number;
  /** null for a mark between numbers */
  text: string | null;
}

/** More turns than these are numbered by round steps, and have no quarters. */
const MOST_TURNS = 40;
const NUMBERS = 8;
/** Turns that a number has room for. */
const MOST_NUMBERED = 1e5;

/** A mark at every turn and quarter; of more turns than a primary has, at round numbers. */
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
