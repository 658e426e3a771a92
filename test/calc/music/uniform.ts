import fc from "fast-check";

const STEPS = 1_000_000;

/** Numbers spread evenly: fast-check's own doubles are even in their bits, so that most are next to nothing. */
export function uniform(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: STEPS }).map((step) => min + ((max - min) * step) / STEPS);
}
