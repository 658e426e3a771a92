import { describe, expect, it } from "vitest";
import { withValueAt } from "../../../src/design/changeAt";
import type { Design } from "../../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { evaluateField } from "../../../src/evaluation/evaluate";
import { designResponse } from "../../../src/evaluation/response/responseStage";
import { solveCoil } from "../../../src/evaluation/solvedCoil";

const at = (changes: Record<string, unknown>): Design =>
  Object.entries(changes).reduce((design, [path, value]) => withValueAt(design, path, value), pierHallLeft);

const { tuning, coupling, secondary } = evaluateField(pierHallLeft);
const resonanceAt = (tap: number) => evaluateField(at({ "primary.tap": tap })).primary?.resonance ?? 0;
const right = evaluateField(pierHallRight);
const target = tuning?.targetResonance ?? 0;

/** The tap at which the primary resonates so far off the target, by halving. */
function tapDetunedBy(relative: number): number {
  let [low, high] = [2, pierHallLeft.primary.turns];
  for (let step = 0; step < 30; step++) {
    const middle = (low + high) / 2;
    if (resonanceAt(middle) > target * (1 + relative)) low = middle;
    else high = middle;
  }
  return low;
}

describe("what passes as tuned", () => {
  it.each([
    [0.0029, true],
    [-0.0029, true],
    [0.0031, false],
    [-0.0031, false],
  ])("ends at three thousandths of the frequency: %f off", (relative, tuned) => {
    const detuned = evaluateField(at({ "primary.tap": tapDetunedBy(relative) })).tuning;
    expect(detuned?.detuning).toBeCloseTo(relative, 5);
    expect(detuned?.tuned).toBe(tuned);
  });
});

describe("the band of taps", () => {
  it("is where the winding's tolerance of one hundredth puts the target", () => {
    const { low, high } = tuning?.suggestedTapBand ?? { low: 0, high: 0 };
    expect(resonanceAt(low) / target).toBeCloseTo(1.01, 4);
    expect(resonanceAt(high) / target).toBeCloseTo(0.99, 4);
  });
});

describe("the curve against the tap", () => {
  it.each([0.3, 0.6, 0.9])(
    "has the very coupling and resonance that the coil has at that tap, at %f of it",
    (part) => {
      const curve = tuning?.curve ?? [];
      const point = curve[Math.round(part * (curve.length - 1))];
      const there = evaluateField(at({ "primary.tap": point.tap }));
      expect(point.coupling).toBeCloseTo(there.coupling?.atResonance ?? 0, 12);
      expect(point.primaryResonance / (there.primary?.resonance ?? 1)).toBeCloseTo(1, 12);
    },
  );

  it.each(
    [0, 0.3, 0.6, 0.9].flatMap((part) => [
      { part, design: pierHallLeft, curve: tuning?.curve ?? [] },
      { part, design: pierHallRight, curve: right.tuning?.curve ?? [] },
    ]),
  )(
    "has the very poles that the response has at that tap, at $part of it: $design.title",
    ({ part, design, curve }) => {
      const point = curve[Math.round(part * (curve.length - 1))];
      const there = withValueAt(design, "primary.tap", point.tap);
      const response = designResponse(there, solveCoil(there));
      expect(point.loadedLowerPole / (response?.loadedLowerPole ?? 0)).toBeCloseTo(1, 9);
      expect(point.loadedUpperPole / (response?.loadedUpperPole ?? 0)).toBeCloseTo(1, 9);
      // those without a spark leave the coil's own losses out
      expect(point.lowerPole / (response?.lowerPole ?? 0)).toBeCloseTo(1, 2);
      expect(point.upperPole / (response?.upperPole ?? 0)).toBeCloseTo(1, 2);
    },
  );

  it.each([
    [pierHallLeft, { tuning, secondary }],
    [pierHallRight, right],
  ] as const)("has one pole below and one above what primary and secondary are alone: $title", (_, field) => {
    // coupled circuits drive each other's resonances apart; far above, the overtones push back
    const own = field.secondary?.resonance ?? 0;
    const points = (field.tuning?.curve ?? []).filter(({ primaryResonance }) => primaryResonance < 1.8 * own);
    expect(points.length).toBeGreaterThan(10);
    for (const { primaryResonance, lowerPole, upperPole } of points) {
      expect(lowerPole).toBeLessThan(Math.min(primaryResonance, own));
      expect(upperPole).toBeGreaterThan(Math.max(primaryResonance, own));
    }
  });
});

describe("the resonance with the primary shorted", () => {
  // a shorted winding leaves the other L(1 − k²): F. E. Terman, Radio Engineers' Handbook (1943), section 3, from memory
  it("is that of the inductance that the short leaves", () => {
    const left = (secondary?.effectiveInductance ?? 0) * (1 - (coupling?.circuit ?? 0) ** 2);
    const expected = 1 / (2 * Math.PI * Math.sqrt(left * (secondary?.effectiveCapacitance ?? 1)));
    expect((secondary?.resonancePrimaryShorted ?? 0) / expected).toBeCloseTo(1, 9);
  });
});
