/** The response of whole designs against the AC analysis of ngspice, which runs the exported netlist. */

import { describe, expect, it } from "vitest";
import { type Network, sineResponse } from "../../../src/calc/circuit/network";
import { polePair } from "../../../src/calc/circuit/poles";
import { responseNetlist } from "../../../src/calc/circuit/responseNetlist";
import { magnitude } from "../../../src/calc/linear/complex";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { responseNetwork } from "../../../src/evaluation/response/responseStage";
import { largest, simulate } from "../../calc/circuit/simulator";
import { randomDesigns } from "../randomDesigns";

interface Peak {
  /** Hz */
  frequency: number;
  value: number;
}

/** Local maxima of a sampled curve, each by the parabola through its three samples. */
function sampledPeaks(frequencies: readonly number[], values: readonly number[]): Peak[] {
  return frequencies.slice(1, -1).flatMap((frequency, index) => {
    const [before, value, after] = values.slice(index, index + 3);
    if (value <= before || value <= after) return [];
    const offset = (before - after) / (2 * (before - 2 * value + after));
    const step = frequency - frequencies[index];
    return [{ frequency: frequency + offset * step, value: value - (before - after) * (offset / 4) }];
  });
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The largest value of a curve with one maximum between two frequencies, by golden section. */
function peakBetween(curve: (frequency: number) => number, from: number, to: number): Peak {
  let [low, high] = [from, to];
  while (high - low > 1e-7 * high) {
    const [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (curve(left) > curve(right)) high = right;
    else low = left;
  }
  const frequency = 0.5 * (low + high);
  return { frequency, value: curve(frequency) };
}

/** Within which our own peak is looked for, as a part of the frequency: far beyond what is allowed. */
const BRACKET = 0.01;

/** Curves of a network by our own formula, under the names of the simulator's columns. */
function ourCurves(network: Network): Record<string, (frequency: number) => number> {
  const at = (frequency: number) => sineResponse(network, frequency);
  return {
    "v(top)": (frequency) => magnitude(at(frequency).topVoltagePerVolt),
    "i(vbridge)": (frequency) => 1 / magnitude(at(frequency).inputImpedance),
  };
}

function simulated(network: Network) {
  return simulate(responseNetlist(network, { loaded: true }) ?? "");
}

/** Compares top voltage and input current: at every sample, and at their peaks, number of these included. */
async function expectSameResponse(network: Network): Promise<void> {
  const column = await simulated(network);
  const frequencies = column("frequency");
  for (const [name, curve] of Object.entries(ourCurves(network))) {
    const [values, expected] = [column(name), frequencies.map(curve)];
    expect(largest(values.map((value, index) => value / expected[index] - 1))).toBeLessThan(1e-6);
    const peaks = sampledPeaks(frequencies, values);
    expect(peaks).toHaveLength(sampledPeaks(frequencies, expected).length);
    for (const { frequency, value } of peaks) {
      const own = peakBetween(curve, frequency * (1 - BRACKET), frequency * (1 + BRACKET));
      expect(Math.abs(frequency / own.frequency - 1)).toBeLessThan(1e-3);
      expect(Math.abs(value / own.value - 1)).toBeLessThan(1e-2);
    }
  }
}

/**
 * A tenth of the circuits' losses and a hundredth of the spark's. With the losses as they are a peak of the
 * magnitude is not at |Im s|/2π of its pole, which is what a pole's frequency means: at a quality factor of 57
 * they are 0.16 % apart. With these they agree, and the simulator's peaks can be held against the poles.
 */
function ringing({ primary, modes, load }: Network): Network {
  const spark = load && {
    ...load,
    resistance: load.resistance * (load.topology === "series" ? 0.01 : 100),
  };
  return {
    primary: { ...primary, resistance: primary.resistance / 10 },
    modes: modes.map((mode) => ({ ...mode, resistance: mode.resistance / 10 })),
    load: spark,
  };
}

async function expectPeaksAtPoles(network: Network): Promise<void> {
  const column = await simulated(network);
  const peaks = sampledPeaks(column("frequency"), column("v(top)"));
  const poles = polePair(network);
  expect(poles).not.toBeNull();
  for (const { frequency } of Object.values(poles ?? {})) {
    const nearest = Math.min(...peaks.map((peak) => Math.abs(peak.frequency / frequency - 1)));
    expect(nearest).toBeLessThan(1e-3);
  }
}

describe("the response in ngspice", () => {
  it.each([
    ["left coil", pierHallLeft],
    ["right coil", pierHallRight],
    ...randomDesigns(10).map((design, index) => [`random design ${index + 1}`, design] as const),
  ] as const)("has our peaks and poles, with and without the spark: %s", async (_, design) => {
    for (const loaded of [false, true]) {
      const network = responseNetwork(design, loaded);
      if (!network) throw new Error("the design has no solution");
      await expectSameResponse(network);
      await expectPeaksAtPoles(ringing(network));
    }
  });
});
