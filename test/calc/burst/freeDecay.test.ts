import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ringDown } from "../../../src/calc/burst/freeDecay";
import {
  burstSystem,
  modeCurrent,
  modeVoltage,
  openLadder,
  secondaryEnergy,
  stateSize,
} from "../../../src/calc/burst/system";
import type { Network } from "../../../src/calc/circuit/network";
import { runs } from "../../properties";
import { network } from "../circuit/drivenNetworks";

const PATH = { resistance: 0, railCapacitance: Number.POSITIVE_INFINITY };
const parts = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 });

/** Modes at up to 10 kV, or the current that goes with it; the fundamental at its full. */
function ringing(of: Network, drawn: readonly number[]): Float64Array {
  const x = new Float64Array(stateSize(of));
  of.modes.forEach(({ inductance, capacitance }, mode) => {
    x[modeVoltage(mode)] = 1e4 * (mode === 0 ? 1 : drawn[2 * mode]);
    x[modeCurrent(mode)] = 1e4 * drawn[2 * mode + 1] * Math.sqrt(capacitance / inductance);
  });
  return x;
}

/** Rings a state down to a part of its energy, over a ladder whose longest step is a third of a radian. */
function rungDown(of: Network, x: Float64Array, part: number) {
  const { inductance, capacitance } = of.modes[0];
  const system = burstSystem(of, PATH, 0.3 * Math.sqrt(inductance * capacitance));
  const before = secondaryEnergy(of, x);
  const decayed = ringDown(of, openLadder(system), system.losses, x, part * before);
  return { ...decayed, before, after: secondaryEnergy(of, x) };
}

describe("the free decay", () => {
  it("turns into heat, in the winding and in the spark, just what the energy has fallen by", () => {
    fc.assert(
      fc.property(network, parts, fc.constantFrom(0.5, 1e-3, 1e-9), (of, drawn, part) => {
        const { before, after, secondary, spark } = rungDown(of, ringing(of, drawn), part);
        expect(after).toBeLessThanOrEqual(part * before);
        expect(Math.abs(secondary + spark - (before - after))).toBeLessThanOrEqual(1e-9 * before);
        expect(Math.min(secondary, spark)).toBeGreaterThanOrEqual(0);
        if (!of.load) expect(spark).toBe(0);
      }),
      runs(100, 20_240_517),
    );
  });
});
