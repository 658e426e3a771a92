/**
 * Exact steps of a linear system dx/dt = Ax, by the matrix exponential at a ladder of halved steps.
 *
 * A rung holds exp(Aτ) − 1, not exp(Aτ): squared as 2E + E² nothing is lost to the one, however many rungs.
 * So any time is the sum of some rungs, and an event is found by halving, each state on the way being exact.
 * Source: scaling and squaring, N. J. Higham, Functions of Matrices (2008), sec. 10.3.
 */

/** A square matrix, row after row. */
export interface SquareMatrix {
  size: number;
  entries: Float64Array;
}

export interface StepLadder {
  system: SquareMatrix;
  /** s, of the highest rung; each rung below is half of it */
  step: number;
  /** exp(Aτ) − 1, longest step first */
  rungs: Float64Array[];
}

/** Rungs of a ladder: the last step is 2⁻²⁴ of the first, some femtoseconds of a step of tens of nanoseconds. */
export const RUNGS = 25;

export function squareMatrix(size: number): SquareMatrix {
  return { size, entries: new Float64Array(size * size) };
}

/** out = A·x */
export function transform(size: number, matrix: Float64Array, x: Float64Array, out: Float64Array): void {
  for (let row = 0, at = 0; row < size; row++) {
    let sum = 0;
    for (let column = 0; column < size; column++, at++) sum += matrix[at] * x[column];
    out[row] = sum;
  }
}

export function product(size: number, a: Float64Array, b: Float64Array): Float64Array {
  const result = new Float64Array(size * size);
  for (let row = 0; row < size; row++) {
    for (let inner = 0; inner < size; inner++) {
      const factor = a[row * size + inner];
      if (factor === 0) continue;
      for (let column = 0, at = row * size; column < size; column++, at++) {
        result[at] += factor * b[inner * size + column];
      }
    }
  }
  return result;
}

/** Sum of magnitudes of the row that has the most: above every rate of the system. */
function largestRow({ size, entries }: SquareMatrix): number {
  let largest = 0;
  for (let row = 0; row < size; row++) {
    let sum = 0;
    for (let column = 0; column < size; column++) sum += Math.abs(entries[row * size + column]);
    largest = Math.max(largest, sum);
  }
  return largest;
}

/** exp(Aτ) − 1 of a short time, by Taylor's series to the sixth order of a time short enough for it. */
function shortStep(system: SquareMatrix, time: number): Float64Array {
  const { size, entries } = system;
  const halvings = Math.max(0, Math.ceil(Math.log2(largestRow(system) * time)) + 4);
  const small = entries.map((entry) => (entry * time) / 2 ** halvings);
  let power: Float64Array = small;
  let sum: Float64Array = small.slice();
  for (let order = 2; order <= 6; order++) {
    power = product(size, power, small).map((entry) => entry / order);
    for (let at = 0; at < sum.length; at++) sum[at] += power[at];
  }
  for (let doubling = 0; doubling < halvings; doubling++) sum = doubled(size, sum);
  return sum;
}

/** exp(2B) − 1 from exp(B) − 1 */
export function doubled(size: number, rung: Float64Array): Float64Array {
  const square = product(size, rung, rung);
  for (let at = 0; at < square.length; at++) square[at] += 2 * rung[at];
  return square;
}

/** @param step s, the longest step */
export function stepLadder(system: SquareMatrix, step: number): StepLadder {
  const rungs: Float64Array[] = new Array(RUNGS);
  rungs[RUNGS - 1] = shortStep(system, step / 2 ** (RUNGS - 1));
  for (let rung = RUNGS - 2; rung >= 0; rung--) rungs[rung] = doubled(system.size, rungs[rung + 1]);
  return { system, step, rungs };
}

/** out = the state one rung later */
export function climb({ system, rungs }: StepLadder, rung: number, x: Float64Array, out: Float64Array): void {
  transform(system.size, rungs[rung], x, out);
  for (let row = 0; row < system.size; row++) out[row] += x[row];
}
