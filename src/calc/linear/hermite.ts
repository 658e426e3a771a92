/**
 * The cubic through two values with given slopes.
 *
 * Source: abramowitzStegun, 25.2.29 with first derivatives; hildebrand, sec. 8.2.
 */

/**
 * The cubic between two values, slopes per unit of t.
 * @param t part of the step, 0 … 1
 */
export function hermite(start: number, end: number, startSlope: number, endSlope: number, t: number): number {
  const rise = end - start;
  const curve = 3 * rise - 2 * startSlope - endSlope;
  return start + t * (startSlope + t * (curve + t * (startSlope + endSlope - 2 * rise)));
}

/** What values and slopes at both ends of a unit step contribute in between. */
export interface HermiteWeights {
  start: number;
  end: number;
  startSlope: number;
  endSlope: number;
}

/** @param t part of the step, 0 … 1 */
export function hermiteWeights(t: number): HermiteWeights {
  const end = t * t * (3 - 2 * t);
  return { start: 1 - end, end, startSlope: t * (1 - t) * (1 - t), endSlope: t * t * (t - 1) };
}
