/** Which turns of the primary the sheet lists, and in how many columns. */
import type { TurnPlace as TurnRadius } from "../calc/coil/primaryGeometry";

const MOST_ROWS = 10;
const MOST_COLUMNS = 3;
const MOST_LISTED = MOST_ROWS * MOST_COLUMNS;

/** Every turn if they fit on the page; otherwise every second, third …, always with the last one. */
export function listedTurns(turns: readonly TurnRadius[]): { listed: readonly TurnRadius[]; step: number } {
  const step = Math.max(1, Math.ceil((turns.length - 1) / (MOST_LISTED - 1)));
  const last = turns.length - 1;
  return { listed: turns.filter((_, index) => index % step === 0 || index === last), step };
}

/** The turns in columns of equal length. */
export function turnColumns(turns: readonly TurnRadius[]): readonly (readonly TurnRadius[])[] {
  const columns = Math.ceil(turns.length / MOST_ROWS);
  const rows = Math.ceil(turns.length / columns);
  return Array.from({ length: columns }, (_, index) => turns.slice(index * rows, (index + 1) * rows));
}
