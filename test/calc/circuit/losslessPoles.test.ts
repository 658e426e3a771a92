import { describe, expect, it } from "vitest";
import { losslessPoles } from "../../../src/calc/circuit/losslessPoles";
import type { Network } from "../../../src/calc/circuit/network";
import { polePair } from "../../../src/calc/circuit/poles";

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
});
