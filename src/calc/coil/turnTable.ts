/**
 * Rows of values at whole turns 0, 1 … n (each of `width` values), read at any turn: cubic Hermite with
 * central differences as slopes (Catmull–Rom), so value and slope run through the whole turns unbroken.
 *
 * Source: catmullRom1974.
 */
import { hermiteWeights } from "../linear/hermite";

export function turnTableWeights(turn: number, last: number): { first: number; weights: number[] } {
  const i = Math.max(0, Math.min(Math.floor(turn), last - 1));
  const t = turn - i;
  const { start, end, startSlope, endSlope } = hermiteWeights(t);
  const weights = [0, start, end, 0];
  addSlope(weights, startSlope, i > 0 ? 0 : 1, 2);
  addSlope(weights, endSlope, 1, i + 2 <= last ? 3 : 2);
  return { first: i - 1, weights };
}

function addSlope(weights: number[], slope: number, from: number, to: number): void {
  const share = slope / (to - from);
  weights[to] = weights[to] + share;
  weights[from] = weights[from] - share;
}

/** Column `column` of the table at `turn`. */
export function readTurnTable(table: Float64Array, turn: number, width = 1, column = 0): number {
  const last = table.length / width - 1;
  if (last === 0) return table[column];
  const { first, weights } = turnTableWeights(turn, last);
  let value = 0;
  weights.forEach((weight, k) => {
    if (weight !== 0) value += weight * table[(first + k) * width + column];
  });
  return value;
}
