import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { resonanceBeside, splitResonances } from "../../../src/calc/coil/pairResonances";

const coil = { resonance: 200e3, capacitance: 25e-12 };
const coupling = { magnetic: -0.004, capacitive: 0.02 };

describe("the resonances of a pair", () => {
  it("of equal coils lie at f√((1 ± kₑ)/(1 ± kₘ))", () => {
    const { inPhase, opposed } = splitResonances(coil, coil, coupling);
    expect(inPhase).toBeCloseTo(200e3 * Math.sqrt(1.02 / 0.996), 6);
    expect(opposed).toBeCloseTo(200e3 * Math.sqrt(0.98 / 1.004), 6);
  });

  it("of equal coils are what each meets beside the other", () => {
    const { inPhase, opposed } = splitResonances(coil, coil, coupling);
    expect(resonanceBeside(coil, coil, coupling, 1)).toBeCloseTo(inPhase, 6);
    expect(resonanceBeside(coil, coil, coupling, -1)).toBeCloseTo(opposed, 6);
  });

  it("without coupling are the coils' own", () => {
    const other = { resonance: 210e3, capacitance: 30e-12 };
    const none = { magnetic: 0, capacitive: 0 };
    const split = splitResonances(coil, other, none);
    expect(Math.max(split.inPhase, split.opposed)).toBeCloseTo(210e3, 6);
    expect(Math.min(split.inPhase, split.opposed)).toBeCloseTo(200e3, 6);
    expect(resonanceBeside(coil, other, none, 1)).toBeCloseTo(200e3, 6);
  });

  it("enclose both coils' own for coupling of one kind, whatever they are", () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(number(50e3, 500e3), number(50e3, 500e3), number(-0.5, 0.5), (f1, f2, capacitive) => {
        const [a, b] = [
          { resonance: f1, capacitance: 2e-11 },
          { resonance: f2, capacitance: 3e-11 },
        ];
        const { inPhase, opposed } = splitResonances(a, b, { magnetic: 0, capacitive });
        const tolerance = 1e-3;
        expect(Math.min(inPhase, opposed)).toBeLessThanOrEqual(Math.min(f1, f2) + tolerance);
        expect(Math.max(inPhase, opposed)).toBeGreaterThanOrEqual(Math.max(f1, f2) - tolerance);
      }),
    );
  });
});
