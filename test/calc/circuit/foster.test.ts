import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { repeatedRise, thermalResistance } from "../../../src/calc/circuit/foster";
import type { FosterElement } from "../../../src/calc/design-parts";
import { runs } from "../../properties";

/** K/W at a time after a steady power began: Σ R(1 − e^(−t/τ)), IEC 60747-9, published.json P-foster. */
function thermalImpedance(network: readonly FosterElement[], time: number): number {
  return network.reduce(
    (sum, { resistance, timeConstant }) => sum - resistance * Math.expm1(-time / timeConstant),
    0,
  );
}

const network = [
  { resistance: 0.004, timeConstant: 1e-4 },
  { resistance: 0.012, timeConstant: 1.2e-3 },
  { resistance: 0.05, timeConstant: 0.018 },
  { resistance: 0.055, timeConstant: 0.19 },
];

const duration = fc.double({ min: 1e-6, max: 1e-2, noNaN: true });

describe("the thermal resistance", () => {
  it("is the impedance after a long time", () => {
    expect(thermalImpedance(network, 100)).toBeCloseTo(thermalResistance(network), 12);
  });
});

describe("the rise under repeated pulses", () => {
  it("of a first burst of constant power is the power times the impedance", () => {
    fc.assert(
      fc.property(duration, (time) => {
        const pulses = [{ duration: time, power: 500, energyAtEnd: 0 }];
        const { firstBurst } = repeatedRise(network, pulses, 1e3);
        expect(firstBurst / (500 * thermalImpedance(network, time))).toBeCloseTo(1, 9);
      }),
      runs(100, 20_240_517),
    );
  });

  // closed form of one element: P·R·(1 − e^(−t/τ))/(1 − e^(−T/τ)) at each pulse's end
  it("of one element peaks at the closed form", () => {
    const [resistance, timeConstant, time, period] = [0.5, 0.02, 0.003, 0.01];
    const { peak } = repeatedRise(
      [{ resistance, timeConstant }],
      [{ duration: time, power: 100, energyAtEnd: 0 }],
      period,
    );
    const closed =
      (100 * resistance * (1 - Math.exp(-time / timeConstant))) / (1 - Math.exp(-period / timeConstant));
    expect(peak).toBeCloseTo(closed, 10);
  });

  it("is the same however a constant power is cut into pulses", () => {
    fc.assert(
      fc.property(duration, fc.integer({ min: 2, max: 40 }), (time, parts) => {
        const whole = repeatedRise(network, [{ duration: time, power: 300, energyAtEnd: 0 }], 0.02);
        const cut = Array.from({ length: parts }, () => ({
          duration: time / parts,
          power: 300,
          energyAtEnd: 0,
        }));
        expect(repeatedRise(network, cut, 0.02).peak / whole.peak).toBeCloseTo(1, 9);
      }),
      runs(100, 20_240_517),
    );
  });

  it("has the mean of the mean power, and lies above it at its worst", () => {
    const pulses = [{ duration: 1e-4, power: 1000, energyAtEnd: 0.02 }];
    const { mean, peak, withinBurst } = repeatedRise(network, pulses, 5e-3);
    expect(mean).toBeCloseTo(thermalResistance(network) * (0.12 / 5e-3), 9);
    expect(peak).toBeGreaterThan(mean);
    expect(withinBurst).toBeGreaterThan(0);
    expect(withinBurst).toBeLessThan(peak);
  });

  it("is nothing without pulses", () => {
    expect(repeatedRise(network, [], 0.01)).toEqual({ peak: 0, mean: 0, withinBurst: 0, firstBurst: 0 });
  });
});
