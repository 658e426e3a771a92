import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { losslessPoles } from "../../../src/calc/circuit/losslessPoles";
import type { Network } from "../../../src/calc/circuit/network";
import { polePair } from "../../../src/calc/circuit/poles";
import { runs } from "../../properties";

const TWO: Network = {
  primary: { inductance: 5.6e-6, resistance: 0, capacitance: 33e-9 },
  modes: [
    { inductance: 0.0169, resistance: 0, capacitance: 11.2e-12, mutual: 0.13 * Math.sqrt(5.6e-6 * 0.0169) },
  ],
  load: null,
};

describe("the lossless poles", () => {
  // reference/burst.json, set S1, closed form
  it("of two circuits are those of the closed form", () => {
    const { lower, upper } = losslessPoles(TWO);
    expect(lower / 346106.447798).toBeCloseTo(1, 9);
    expect(upper / 394664.785926).toBeCloseTo(1, 9);
  });

  it("with overtones are the zeros that the general search finds", () => {
    const modes = [
      ...TWO.modes,
      { inductance: 0.004, resistance: 0, capacitance: 6e-12, mutual: 1.2e-5 },
      { inductance: 0.002, resistance: 0, capacitance: 4e-12, mutual: -8e-6 },
    ];
    const network = { ...TWO, modes };
    const { lower, upper } = losslessPoles(network);
    const found = polePair(network);
    expect(lower / (found?.lower.frequency ?? 0)).toBeCloseTo(1, 8);
    expect(upper / (found?.upper.frequency ?? 0)).toBeCloseTo(1, 8);
  });

  it("are finite and stand about the fundamental however near an overtone comes", () => {
    const close = fc.record({
      ratio: fc.double({ min: 1.02, max: 1.6, noNaN: true }),
      coupling: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
      detuning: fc.double({ min: 0.3, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(close, ({ ratio, coupling, detuning }) => {
        const [fundamental] = TWO.modes;
        const overtone = { ...fundamental, inductance: fundamental.inductance / ratio ** 2 };
        const mutual = coupling * Math.sqrt(TWO.primary.inductance * overtone.inductance);
        const primary = { ...TWO.primary, capacitance: TWO.primary.capacitance * detuning };
        const { lower, upper } = losslessPoles({
          ...TWO,
          primary,
          modes: [fundamental, { ...overtone, mutual }],
        });
        const own = 1 / (2 * Math.PI * Math.sqrt(fundamental.inductance * fundamental.capacitance));
        expect(lower).toBeGreaterThan(0);
        expect(lower).toBeLessThan(own);
        expect(upper).toBeGreaterThan(own);
        expect(Number.isFinite(upper)).toBe(true);
      }),
      runs(200, 20_240_517),
    );
  });
});
