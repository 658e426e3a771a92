/**
 * How many cases a property is tried with. In every run of the tests few, with the same seed; in the torture many
 * times as many, with another.
 */
const TIMES = Number(process.env.PROPERTY_TIMES ?? 1);
const OTHER_SEED = Number(process.env.PROPERTY_SEED ?? 0);

export const SEED = 20_261 + OTHER_SEED;

/** Cases of a list that is drawn. */
export function few(count: number): number {
  return count * TIMES;
}

/** Of a property: so many cases, drawn from a seed. */
export function runs(count: number, seed = 20_261): { numRuns: number; seed: number } {
  return { numRuns: few(count), seed: seed + OTHER_SEED };
}
