import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { transform } from "../../../src/calc/burst/stepLadder";
import {
  modeCurrent,
  modeVoltage,
  openSystem,
  SPARK,
  secondaryEnergy,
  stateSize,
  storedEnergy,
  topVoltage,
} from "../../../src/calc/burst/system";
import type { Network } from "../../../src/calc/circuit/network";
import { runs } from "../../properties";
import { network } from "../circuit/drivenNetworks";

const parts = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 7, maxLength: 7 });

/** Modes and spark at up to 10 kV, or the current that goes with it; the primary at rest. */
function stateOf(of: Network, drawn: readonly number[]): Float64Array {
  const x = new Float64Array(stateSize(of));
  of.modes.forEach(({ inductance, capacitance }, mode) => {
    x[modeVoltage(mode)] = 1e4 * drawn[2 * mode];
    x[modeCurrent(mode)] = 1e4 * drawn[2 * mode + 1] * Math.sqrt(capacitance / inductance);
  });
  if (of.load?.topology === "series") x[SPARK] = 1e4 * drawn[6];
  return x;
}

/** W that the modes' resistances and the spark's turn into heat. */
function heat({ modes, load }: Network, x: Float64Array): number {
  const inModes = modes.reduce(
    (sum, { resistance }, mode) => sum + resistance * x[modeCurrent(mode)] ** 2,
    0,
  );
  if (!load) return inModes;
  return (
    inModes +
    (topVoltage(modes.length, x) - (load.topology === "series" ? x[SPARK] : 0)) ** 2 / load.resistance
  );
}

/** dE/dt along the open system: exact, because the energy is a square. */
function energyRate(of: Network, x: Float64Array, time: number): number {
  const { size, entries } = openSystem(of);
  const rate = new Float64Array(size);
  transform(size, entries, x, rate);
  const at = (sign: number) =>
    secondaryEnergy(
      of,
      x.map((value, row) => value + sign * time * rate[row]),
    );
  return (at(1) - at(-1)) / (2 * time);
}

describe("the energy of modes and spark", () => {
  it("is ½CU² of a charged mode and ½LI² of one that carries a current", () => {
    const [of] = fc.sample(network, { seed: 20_240_517, numRuns: 1 });
    const bare = { ...of, load: null };
    const { inductance, capacitance } = of.modes[0];
    const x = new Float64Array(stateSize(bare));
    x[modeVoltage(0)] = 3e5;
    expect(secondaryEnergy(bare, x) / (0.5 * capacitance * 3e5 ** 2)).toBeCloseTo(1, 12);
    x[modeVoltage(0)] = 0;
    x[modeCurrent(0)] = 4;
    expect(secondaryEnergy(bare, x) / (0.5 * inductance * 4 ** 2)).toBeCloseTo(1, 12);
  });

  it("is all that is stored while the primary is at rest", () => {
    fc.assert(
      fc.property(network, parts, (of, drawn) => {
        const x = stateOf(of, drawn);
        const stored = storedEnergy(of, 0, x);
        expect(Math.abs(secondaryEnergy(of, x) - stored)).toBeLessThanOrEqual(1e-12 * stored);
      }),
      runs(100, 20_240_517),
    );
  });

  it("falls by what the resistances turn into heat while the primary is open, and by nothing else", () => {
    fc.assert(
      fc.property(network, parts, (of, drawn) => {
        const x = stateOf(of, drawn);
        const time = Math.sqrt(of.modes[2].inductance * of.modes[2].capacitance);
        const scale = secondaryEnergy(of, x) / time + heat(of, x);
        expect(Math.abs(energyRate(of, x, time) + heat(of, x))).toBeLessThanOrEqual(1e-9 * scale);
      }),
      runs(100, 20_240_517),
    );
  });
});
