import { describe, expect, it } from "vitest";
import type { Network } from "../../../src/calc/circuit/network";
import { polePair } from "../../../src/calc/circuit/poles";
import { responseNetlist } from "../../../src/calc/circuit/responseNetlist";

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
