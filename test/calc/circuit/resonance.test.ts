import { describe, expect, it } from "vitest";
import {
  angularResonance,
  characteristicImpedance,
  resonance,
  seriesQualityFactor,
  shortedResonance,
} from "../../../src/calc/circuit/resonance";

describe("the resonance of an inductance and a capacitance", () => {
  it("is one cycle a second for 1/(4π²) H and 1 F, by Thomson's formula", () => {
    expect(resonance(1 / (4 * Math.PI ** 2), 1)).toBeCloseTo(1, 12);
    expect(angularResonance(4, 0.25)).toBe(1);
  });

  it("stands at Z₀ volts per ampere, and Q = Z₀/R", () => {
    expect(characteristicImpedance(9, 4)).toBe(1.5);
    expect(seriesQualityFactor(9, 4, 0.5)).toBeCloseTo(3, 12);
  });

  it("rises by 1/√(1 − k²) where a coupled coil is shorted: to five quarters at k = 0.6", () => {
    expect(shortedResonance(100e3, 0.6)).toBeCloseTo(125e3, 6);
    expect(shortedResonance(100e3, -0.6)).toBeCloseTo(125e3, 6);
  });

  it("has no such value for a complete coupling", () => {
    expect(shortedResonance(100e3, 1)).toBeNull();
    expect(shortedResonance(100e3, -1.2)).toBeNull();
  });
});
