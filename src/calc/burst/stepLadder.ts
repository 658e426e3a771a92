/**
 * Exact steps of a linear system dx/dt = Ax, by the matrix exponential at a ladder of halved steps.
 *
 * A rung holds exp(Aτ) − 1, not exp(Aτ): squared as 2E + E² nothing is lost to the one, however many rungs.
 * The lowest rung is short enough for Taylor's series, so that any time is the sum of some rungs and a rest, and the
 * moment at which something happens is found on the series.
 * Source: higham2008, sec. 10.3 (scaling and squaring).
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
  /** exp(Aτ) − 1, longest step first; as many as the fastest rate asks for */
  rungs: Float64Array[];
}

/** All zero. */
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

/** A·B */
export function product(size: number, a: Float64Array, b: Float64Array): Float64Array {
  const result = new Float64Array(size * size);
  for (let row = 0, at = 0; row < size; row++) {
    for (let column = 0; column < size; column++, at++) {
      let sum = 0;
      for (let inner = 0, from = row * size, to = column; inner < size; inner++, from++, to += size)
        sum += a[from] * b[to];
      result[at] = sum;
    }
  }
  return result;
}

/** Passes over the state in which units are chosen. */
const BALANCINGS = 3;

/** Chooses the unit of one quantity so that it drives the others as much as they drive it. */
function balance(size: number, entries: Float64Array, at: number): void {
  let [row, column] = [0, 0];
  for (let other = 0; other < size; other++) {
    if (other === at) continue;
    row += entries[at * size + other];
    column += entries[other * size + at];
  }
  // without either way there is no way back, so that no rate comes of it
  const [rowFactor, columnFactor] =
    row * column > 0 ? [Math.sqrt(column / row), Math.sqrt(row / column)] : [0, 0];
  for (let other = 0; other < size; other++) {
    if (other === at) continue;
    entries[at * size + other] *= rowFactor;
    entries[other * size + at] *= columnFactor;
  }
}

/**
 * 1/s, above every rate of the system: the largest row's sum of magnitudes, in units that make it small.
 * Source: golubVanLoan, sec. 7.5.7 (balancing).
 */
function fastestRate({ size, entries }: SquareMatrix): number {
  const magnitudes = new Float64Array(entries.length);
  for (let at = 0; at < entries.length; at++) magnitudes[at] = Math.abs(entries[at]);
  for (let pass = 0; pass < BALANCINGS; pass++)
    for (let at = 0; at < size; at++) balance(size, magnitudes, at);
  let largest = 0;
  for (let row = 0, at = 0; row < size; row++) {
    let sum = 0;
    for (let column = 0; column < size; column++, at++) sum += magnitudes[at];
    largest = Math.max(largest, sum);
  }
  return largest;
}

/** Order of the series; over a time of SHORT of the fastest rate's it is exact to rounding. */
const ORDER = 8;
const SHORT = 1 / 12;

/** one + first·B + second·B² */
function quadratic(size: number, b: Float64Array, square: Float64Array, coefficients: readonly number[]) {
  const [one, first, second] = coefficients;
  const sum = new Float64Array(size * size);
  for (let at = 0; at < sum.length; at++) sum[at] = first * b[at] + second * square[at];
  for (let row = 0; row < size; row++) sum[row * (size + 1)] += one;
  return sum;
}

function addTo(sum: Float64Array, other: Float64Array): Float64Array {
  for (let at = 0; at < sum.length; at++) sum[at] += other[at];
  return sum;
}

/** exp(B) − 1 = B + B²/2 + B³(1/6 + B/24 + B²/120 + B³(1/720 + B/5040 + B²/40320)) with B = Aτ of a short time */
function shortStep({ size, entries }: SquareMatrix, time: number): Float64Array {
  const b = entries.slice();
  for (let at = 0; at < b.length; at++) b[at] *= time;
  const square = product(size, b, b);
  const cube = product(size, b, square);
  const highest = product(size, cube, quadratic(size, b, square, [1 / 720, 1 / 5040, 1 / 40320]));
  const higher = addTo(highest, quadratic(size, b, square, [1 / 6, 1 / 24, 1 / 120]));
  return addTo(product(size, cube, higher), quadratic(size, b, square, [0, 1, 1 / 2]));
}

/** exp(2B) − 1 from exp(B) − 1 */
export function doubled(size: number, rung: Float64Array): Float64Array {
  const square = product(size, rung, rung);
  for (let at = 0; at < square.length; at++) square[at] += 2 * rung[at];
  return square;
}

/** @param step s, the longest step */
export function stepLadder(system: SquareMatrix, step: number): StepLadder {
  const halvings = Math.max(0, Math.ceil(Math.log2((fastestRate(system) * step) / SHORT)));
  const rungs: Float64Array[] = new Array(halvings + 1);
  rungs[halvings] = shortStep(system, step / 2 ** halvings);
  for (let rung = halvings - 1; rung >= 0; rung--) rungs[rung] = doubled(system.size, rungs[rung + 1]);
  return { system, step, rungs };
}

/** s, of the lowest rung */
export function lowestStep({ step, rungs }: StepLadder): number {
  return step / 2 ** (rungs.length - 1);
}

/** out = the state one rung later */
export function climb({ system, rungs }: StepLadder, rung: number, x: Float64Array, out: Float64Array): void {
  const { size } = system;
  const matrix = rungs[rung];
  for (let row = 0, at = 0; row < size; row++) {
    let sum = x[row];
    for (let column = 0; column < size; column++, at++) sum += matrix[at] * x[column];
    out[row] = sum;
  }
}

/** Room for Taylor's terms of a state. */
export function seriesRoom(size: number): Float64Array[] {
  return Array.from({ length: ORDER + 1 }, () => new Float64Array(size));
}

/** Taylor's terms of the state over a time not longer than the lowest rung. */
function expand({ size, entries }: SquareMatrix, time: number, x: Float64Array, terms: Float64Array[]): void {
  terms[0].set(x);
  for (let order = 1; order <= ORDER; order++) {
    const term = terms[order];
    transform(size, entries, terms[order - 1], term);
    for (let row = 0; row < size; row++) term[row] *= time / order;
  }
}

/** out = the state after a part of the time that the terms are for */
function sumSeries(terms: readonly Float64Array[], part: number, out: Float64Array): void {
  out.set(terms[ORDER]);
  for (let order = ORDER - 1; order >= 0; order--) {
    const term = terms[order];
    for (let row = 0; row < out.length; row++) out[row] = term[row] + part * out[row];
  }
}

/** out = the state after a time not longer than the longest step: by rungs, and over the rest by the series */
export function travel(
  ladder: StepLadder,
  time: number,
  x: Float64Array,
  out: Float64Array,
  terms: Float64Array[],
): void {
  if (time === ladder.step) {
    climb(ladder, 0, x, out);
    return;
  }
  out.set(x);
  let left = time;
  for (let rung = 0, part = ladder.step; rung < ladder.rungs.length; rung++, part /= 2) {
    if (part > left) continue;
    climb(ladder, rung, out, terms[0]);
    out.set(terms[0]);
    left -= part;
  }
  if (left === 0) return;
  expand(ladder.system, left, out, terms);
  sumSeries(terms, 1, out);
}

/** A state and its rate. */
export interface Instant {
  x: Float64Array;
  rate: Float64Array;
}

/** Where a system is, where it is moved to, and the room that this takes. */
export interface Place {
  here: Instant;
  there: Instant;
  /** a state that is tried */
  next: Float64Array;
  /** Taylor's terms of a state */
  terms: Float64Array[];
}

/** All zero. */
export function placeAtRest(size: number): Place {
  const instant = () => ({ x: new Float64Array(size), rate: new Float64Array(size) });
  return { here: instant(), there: instant(), next: new Float64Array(size), terms: seriesRoom(size) };
}

/** Writes the rate of the state. */
export function renewRate({ system }: StepLadder, { x, rate }: Instant): void {
  transform(system.size, system.entries, x, rate);
}

/** Moves from here to there, in a time not longer than the longest step. */
export function advance(ladder: StepLadder, { here, there, terms }: Place, time: number): void {
  travel(ladder, time, here.x, there.x, terms);
  renewRate(ladder, there);
}

/** The part of the longest step to which an event's time is found: a few femtoseconds. */
export const RESOLUTION = 2 ** -24;
/** Least part of the bracket that a guess by secant keeps from its ends: what is left shrinks to it. */
const FROM_ENDS = 0.01;

/** How far a state is from changing what comes after; below 0 it has. */
type Margin = (x: Float64Array) => number;

/** Climbs from here as long as nothing happens, down to the lowest rung. Gives the time passed. */
function approach(ladder: StepLadder, { here, there, next }: Place, time: number, margin: Margin): number {
  const { x } = there;
  x.set(here.x);
  let passed = 0;
  for (let rung = 0, part = ladder.step; rung < ladder.rungs.length; rung++, part /= 2) {
    if (passed + part > time) continue;
    climb(ladder, rung, x, next);
    if (margin(next) < 0) continue;
    x.set(next);
    passed += part;
  }
  return passed;
}

/** Leaves there just after the event: a root search on the series, by secants kept from the bracket's ends. */
function closeIn(
  { system, step }: StepLadder,
  { there, next, terms }: Place,
  span: number,
  margin: Margin,
): number {
  expand(system, span, there.x, terms);
  sumSeries(terms, 1, next);
  let [low, high] = [0, 1];
  let [before, after] = [margin(there.x), margin(next)];
  while ((high - low) * span > step * RESOLUTION && after < 0) {
    const secant = before / (before - after);
    const part = low + (high - low) * Math.min(Math.max(secant, FROM_ENDS), 1 - FROM_ENDS);
    sumSeries(terms, part, next);
    const between = margin(next);
    if (between < 0) [high, after] = [part, between];
    else [low, before] = [part, between];
  }
  sumSeries(terms, high, there.x);
  return high * span;
}

/** Shortens a step in which something happens to just after that. Gives its time. */
export function moveToEvent(ladder: StepLadder, place: Place, time: number, margin: Margin): number {
  const passed = approach(ladder, place, time, margin);
  const until = passed + closeIn(ladder, place, Math.min(lowestStep(ladder), time - passed), margin);
  renewRate(ladder, place.there);
  return until;
}
