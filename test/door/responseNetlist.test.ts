import { describe, expect, it } from "vitest";
import { type ResponseNetwork, responseNetlist } from "../../src/door/responseNetlist";

const mode = { inductance: 0.08, capacitance: 3e-11, resistance: 200, mutualInductance: 1.2e-4 };

const network: ResponseNetwork = {
  title: "Pier hall,\nleft coil",
  primary: { inductance: 2e-5, capacitance: 1e-7, resistance: 0.05 },
  modes: [mode, { ...mode, inductance: 0.01, capacitance: 2e-11, mutualInductance: -2e-5 }],
  spark: null,
  lowerPole: 95e3,
  upperPole: 115e3,
};

const text = responseNetlist(network);

function card(name: string): string[] {
  return (text.split("\n").find((line) => line.startsWith(`${name} `)) ?? "").split(" ");
}

/** Frequencies at which two lossless coupled circuits ring: the roots of (1−k²)x² − (a+b)x + ab, x = ω². */
function polesOf(primary: ResponseNetwork["primary"], secondary: typeof mode): number[] {
  const a = 1 / (primary.inductance * primary.capacitance);
  const b = 1 / (secondary.inductance * secondary.capacitance);
  const k2 = secondary.mutualInductance ** 2 / (primary.inductance * secondary.inductance);
  const root = Math.sqrt((a + b) ** 2 - 4 * (1 - k2) * a * b);
  return [a + b - root, a + b + root].map((twice) => Math.sqrt(twice / (2 * (1 - k2))) / (2 * Math.PI));
}

interface Simulated {
  variableNames: string[];
  data: { values: { real: number; img: number }[] }[];
}

async function simulated(netlist: string): Promise<{ frequency: number; top: number }[]> {
  const { Simulation } = await import("eecircuit-engine");
  const simulation = new Simulation();
  await simulation.start();
  simulation.setNetList(netlist);
  const result = (await simulation.runSim()) as unknown as Simulated;
  const column = (name: string) => result.data[result.variableNames.indexOf(name)].values;
  const top = column("v(top)");
  return column("frequency").map(({ real }, index) => ({
    frequency: real,
    top: Math.hypot(top[index].real, top[index].img),
  }));
}

function peaks(curve: { frequency: number; top: number }[]): number[] {
  return curve
    .filter(({ top }, index) => top > (curve[index - 1]?.top ?? top) && top > (curve[index + 1]?.top ?? top))
    .map(({ frequency }) => frequency);
}

describe("the netlist of the frequency response", () => {
  it("sweeps once, over both poles, in steps of at most 0.02 % of the lower one", () => {
    const [, , points, from, to] = card(".ac").map((part, index) =>
      index > 1 ? Number(part) : part,
    ) as number[];
    expect(from).toBeLessThan(network.lowerPole);
    expect(to).toBeGreaterThan(network.upperPole);
    expect((to - from) / (points - 1)).toBeLessThanOrEqual(2e-4 * network.lowerPole);
    expect(text.match(/^\.ac/gm)).toHaveLength(1);
    expect(text).not.toContain(".control");
  });

  it("keeps the sign of a mode's mutual inductance by the order of its nodes", () => {
    expect(card("Lmode1").slice(1, 3)).toEqual(["inner1", "0"]);
    expect(card("Lmode2").slice(1, 3)).toEqual(["stack1", "inner2"]);
    expect(Number(card("Kmode2")[3])).toBeGreaterThan(0);
  });

  it("holds a spark only where there is one", () => {
    expect(text).not.toContain("spark");
    const loaded = responseNetlist({ ...network, spark: { resistance: 2e5, capacitance: 5e-12 } });
    expect(loaded).toContain("Rspark top tip");
    expect(loaded).toContain("Cspark tip 0");
  });

  it("keeps a title on the first line", () => {
    expect(text.split("\n")[0]).toBe("* Pier hall, left coil: frequency response");
  });

  // closed form of two coupled circuits, any textbook of network theory; the simulator is ngspice
  it("peaks in a circuit simulator where two coupled circuits ring", async () => {
    const [lowerPole, upperPole] = polesOf(network.primary, mode);
    const two = { ...network, modes: [mode], lowerPole, upperPole };
    const found = peaks(await simulated(responseNetlist(two)));
    expect(found).toHaveLength(2);
    expect(Math.abs(found[0] / lowerPole - 1)).toBeLessThan(3e-4);
    expect(Math.abs(found[1] / upperPole - 1)).toBeLessThan(3e-4);
  });
});
