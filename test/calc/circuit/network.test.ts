import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Network, sineResponse } from "../../../src/calc/circuit/network";
import { magnitude } from "../../../src/calc/linear/complex";
import { runs } from "../../properties";
import { network, primaryFrequency } from "./drivenNetworks";

const ratio = fc.double({ min: Math.log(0.2), max: Math.log(6), noNaN: true }).map(Math.exp);

/** The same network with the source at the top, by hand: open primary circuit closed through its own impedance. */
function currentIntoPrimaryPerAmpereAtTop(of: Network, frequency: number): number {
  // reciprocity: v_top per volt at the bridge equals short-circuit current at the bridge per ampere at the top
  const { primary, modes, load } = of;
  const omega = 2 * Math.PI * frequency;
  return solveByElimination(primary, modes, load, omega);
}

type Pair = [number, number];
const times = ([a, b]: Pair, [c, d]: Pair): Pair => [a * c - b * d, a * d + b * c];
const over = (a: Pair, [c, d]: Pair): Pair => {
  const square = c * c + d * d;
  return times(a, [c / square, -d / square]);
};

/** Gaussian elimination of the complex mesh equations, one ampere into the top's node, bridge shorted. */
function solveByElimination(
  primary: Network["primary"],
  modes: Network["modes"],
  load: Network["load"],
  omega: number,
): number {
  const loadAdmittance: Pair = !load
    ? [0, 0]
    : load.topology === "parallel"
      ? [1 / load.resistance, omega * load.capacitance]
      : over([0, omega * load.capacitance], [1, omega * load.capacitance * load.resistance]);
  // unknowns: primary current, mode currents, load current; u_n = (i_n − i_load + 1)/(jωC_n)
  const size = modes.length + 2;
  const rows: Pair[][] = Array.from({ length: size }, () => Array.from({ length: size + 1 }, () => [0, 0]));
  rows[0][0] = [primary.resistance, omega * primary.inductance - 1 / (omega * primary.capacitance)];
  modes.forEach(({ inductance, capacitance, resistance, mutual }, mode) => {
    const reactance = -1 / (omega * capacitance);
    rows[0][mode + 1] = [0, omega * mutual];
    rows[mode + 1][0] = [0, omega * mutual];
    rows[mode + 1][mode + 1] = [resistance, omega * inductance + reactance];
    rows[mode + 1][size - 1] = [0, -reactance];
    rows[mode + 1][size] = [0, -reactance];
    const admitted = times(loadAdmittance, [0, reactance]);
    rows[size - 1][mode + 1] = [-admitted[0], -admitted[1]];
    rows[size - 1][size - 1] = [
      rows[size - 1][size - 1][0] + admitted[0],
      rows[size - 1][size - 1][1] + admitted[1],
    ];
    rows[size - 1][size] = [rows[size - 1][size][0] + admitted[0], rows[size - 1][size][1] + admitted[1]];
  });
  rows[size - 1][size - 1][0] += 1;
  return Math.hypot(...firstUnknown(rows));
}

/** Unknowns are eliminated from the last to the first, so that the first is left. */
function firstUnknown(rows: Pair[][]): Pair {
  for (let pivot = rows.length - 1; pivot > 0; pivot--) {
    for (let row = 0; row < pivot; row++) {
      const factor = over(rows[row][pivot], rows[pivot][pivot]);
      rows[row] = rows[row].map((entry, column) => {
        const [re, im] = times(factor, rows[pivot][column]);
        return [entry[0] - re, entry[1] - im];
      });
    }
  }
  return over(rows[0][rows.length], rows[0][0]);
}

describe("the coupled network", () => {
  it("never gives back more than it takes: the input resistance is not below zero", () => {
    fc.assert(
      fc.property(network, ratio, (of, part) => {
        const { inputImpedance } = sineResponse(of, part * primaryFrequency(of));
        expect(inputImpedance.re).toBeGreaterThanOrEqual(0);
      }),
      runs(150, 20_240_517),
    );
  });

  it("is reciprocal: top voltage per bridge volt is bridge current per ampere at the top", () => {
    fc.assert(
      fc.property(network, ratio, (of, part) => {
        const frequency = part * primaryFrequency(of);
        const forward = magnitude(sineResponse(of, frequency).topVoltagePerVolt);
        const backward = currentIntoPrimaryPerAmpereAtTop(of, frequency);
        expect(Math.abs(backward / forward - 1)).toBeLessThan(1e-9);
      }),
      runs(100, 20_240_517),
    );
  });

  it("does not change when impedance and time are scaled by a thousand", () => {
    fc.assert(
      fc.property(network, ratio, (of, part) => {
        const scaled: Network = {
          primary: {
            inductance: of.primary.inductance * 1e6,
            capacitance: of.primary.capacitance,
            resistance: of.primary.resistance * 1e3,
          },
          modes: of.modes.map(({ inductance, capacitance, resistance, mutual }) => ({
            inductance: inductance * 1e6,
            capacitance,
            resistance: resistance * 1e3,
            mutual: mutual * 1e6,
          })),
          load: of.load && { ...of.load, resistance: of.load.resistance * 1e3 },
        };
        const frequency = part * primaryFrequency(of);
        const [a, b] = [sineResponse(of, frequency), sineResponse(scaled, frequency / 1e3)];
        expect(magnitude(b.topVoltagePerVolt) / magnitude(a.topVoltagePerVolt)).toBeCloseTo(1, 9);
        expect(magnitude(b.inputImpedance) / magnitude(a.inputImpedance)).toBeCloseTo(1e3, 5);
      }),
      runs(100, 20_240_517),
    );
  });
});
