import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { magnitude } from "../../../src/calc/circuit/complex";
import { type Network, sineResponse } from "../../../src/calc/circuit/network";
import { polePair } from "../../../src/calc/circuit/poles";
import { responseNetlist } from "../../../src/calc/circuit/responseNetlist";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { responseNetwork } from "../../../src/evaluation/evaluate";
import { network as networks, SEEDED } from "./drivenNetworks";
import { largest, simulate } from "./simulator";

const fundamental = { inductance: 0.08, capacitance: 3e-11, resistance: 200, mutual: 1.2e-4 };

const network: Network = {
  primary: { inductance: 2e-5, capacitance: 1e-7, resistance: 0.05 },
  modes: [fundamental, { ...fundamental, inductance: 0.01, capacitance: 2e-11, mutual: -2e-5 }],
  load: null,
};

function netlist(of: Network, title?: string): string {
  return responseNetlist(of, { loaded: true, title }) ?? "";
}

function card(text: string, name: string): string[] {
  return (text.split("\n").find((line) => line.startsWith(`${name} `)) ?? "").split(" ");
}

describe("the netlist of the frequency response", () => {
  it("sweeps once, over both poles, in steps of at most 0.02 % of the lower one", () => {
    const text = netlist(network);
    const [points, from, to] = card(text, ".ac").slice(2).map(Number);
    const { lower, upper } = polePair(network)!;
    expect(from).toBeLessThan(lower.frequency);
    expect(to).toBeGreaterThan(upper.frequency);
    expect((to - from) / (points - 1)).toBeLessThanOrEqual(2e-4 * lower.frequency);
    expect(card(text, ".ac")[1]).toBe("lin");
    expect(text.match(/^\.ac/gm)).toHaveLength(1);
    expect(text).not.toContain(".control");
  });

  it("keeps the sign of a mode's mutual inductance by the order of its nodes", () => {
    const text = netlist(network);
    expect(card(text, "Lmode1").slice(1, 3)).toEqual(["inner1", "0"]);
    expect(card(text, "Lmode2").slice(1, 3)).toEqual(["stack1", "inner2"]);
    expect(Number(card(text, "Kmode2")[3])).toBeGreaterThan(0);
  });

  it("wires the spark in series or in parallel as the design has it", () => {
    const spark = { resistance: 2e5, capacitance: 5e-12 };
    const series = netlist({ ...network, load: { ...spark, topology: "series" } });
    expect(card(series, "Rspark").slice(1, 3)).toEqual(["top", "tip"]);
    expect(card(series, "Cspark").slice(1, 3)).toEqual(["tip", "0"]);
    const parallel = netlist({ ...network, load: { ...spark, topology: "parallel" } });
    expect(card(parallel, "Rspark").slice(1, 3)).toEqual(["top", "0"]);
    expect(card(parallel, "Cspark").slice(1, 3)).toEqual(["top", "0"]);
  });

  it("leaves the spark out unless it is asked for", () => {
    const loaded: Network = {
      ...network,
      load: { resistance: 2e5, capacitance: 5e-12, topology: "series" },
    };
    expect(responseNetlist(loaded, { loaded: false })).not.toContain("Rspark");
    expect(netlist(network)).not.toContain("Rspark");
  });

  it("sweeps where the coil rings without the spark, if with it nothing rings", () => {
    const bare = { ...network, modes: [fundamental] };
    const load = { resistance: 1e4, capacitance: 5e-12, topology: "parallel" as const };
    expect(polePair({ ...bare, load })).toBeNull();
    const damped = netlist({ ...bare, load });
    expect(damped).toContain("Rspark top 0");
    expect(card(damped, ".ac")).toEqual(card(netlist(bare), ".ac"));
  });

  it("keeps a title on the first line", () => {
    expect(netlist(network, "Pier hall,\nleft coil").split("\n")[0]).toMatch(/^\* Pier hall, left coil: /);
  });
});

interface Sample {
  frequency: number;
  top: number;
  current: number;
}

async function simulated(text: string): Promise<Sample[]> {
  const column = await simulate(text);
  const [top, current] = [column("v(top)"), column("i(vbridge)")];
  return column("frequency").map((frequency, index) => ({
    frequency,
    top: top[index],
    current: current[index],
  }));
}

/** Local maxima of the top's voltage, each by the parabola through its three samples. */
function peaks(samples: Sample[]): { frequency: number; top: number }[] {
  return samples.slice(1, -1).flatMap(({ frequency, top }, index) => {
    const [before, after] = [samples[index].top, samples[index + 2].top];
    if (top <= before || top <= after) return [];
    const bend = before - 2 * top + after;
    const offset = (before - after) / (2 * bend);
    const step = frequency - samples[index].frequency;
    return [{ frequency: frequency + offset * step, top: top - (before - after) * (offset / 4) }];
  });
}

function ours(of: Network, { frequency }: Sample): Sample {
  const { topVoltagePerVolt, inputImpedance } = sineResponse(of, frequency);
  return { frequency, top: magnitude(topVoltagePerVolt), current: 1 / magnitude(inputImpedance) };
}

/** Simulates a network and compares the curves at every sample, and their peaks. */
async function expectSameCurves(of: Network): Promise<void> {
  const samples = await simulated(netlist(of));
  const computed = samples.map((sample) => ours(of, sample));
  expect(largest(samples.map(({ top }, index) => top / computed[index].top - 1))).toBeLessThan(1e-4);
  expect(largest(samples.map(({ current }, index) => current / computed[index].current - 1))).toBeLessThan(
    1e-4,
  );
  const [found, expected] = [peaks(samples), peaks(computed)];
  expect(found).toHaveLength(expected.length);
  const pairs = found.map((peak, index) => [peak, expected[index]] as const);
  expect(largest(pairs.map(([one, other]) => one.frequency / other.frequency - 1))).toBeLessThan(1e-3);
  expect(largest(pairs.map(([one, other]) => one.top / other.top - 1))).toBeLessThan(1e-2);
}

/** No spark and a tenth of the losses: there the peaks of a curve stand at the poles. */
function ringing({ primary, modes }: Network): Network {
  return {
    primary: { ...primary, resistance: primary.resistance / 10 },
    modes: modes.map((mode) => ({ ...mode, resistance: mode.resistance / 10 })),
    load: null,
  };
}

async function expectPeaksAtPoles(of: Network): Promise<void> {
  const samples = await simulated(netlist(of));
  const { lower, upper } = polePair(of)!;
  for (const { frequency } of [lower, upper]) {
    const nearest = Math.min(...peaks(samples).map((peak) => Math.abs(peak.frequency / frequency - 1)));
    expect(nearest).toBeLessThan(1e-3);
  }
}

describe("the netlist in a circuit simulator", () => {
  it.each([
    ["left coil", pierHallLeft],
    ["right coil", pierHallRight],
  ])("agrees with the response of the %s, with and without its spark", async (_, design) => {
    for (const loaded of [false, true]) await expectSameCurves(responseNetwork(design, loaded)!);
    await expectPeaksAtPoles(ringing(responseNetwork(design, false)!));
  });

  it.each(fc.sample(networks, { ...SEEDED, numRuns: 10 }).map((drawn, index) => ({ drawn, index })))(
    "agrees with the response of random network $index",
    async ({ drawn }) => {
      for (const load of [null, drawn.load]) await expectSameCurves({ ...drawn, load });
      await expectPeaksAtPoles(ringing(drawn));
    },
  );
});
