/** ngspice, in its npm build: the outside check of the netlists. */
import { vi } from "vitest";

interface Result {
  variableNames: string[];
  data: { values: (number | { real: number; img: number })[] }[];
}

async function silently<Value>(run: () => Promise<Value>): Promise<Value> {
  const spies = (["log", "warn", "error", "info"] as const).map((name) =>
    vi.spyOn(console, name).mockImplementation(() => undefined),
  );
  try {
    return await run();
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}

async function started() {
  const { Simulation } = await import("eecircuit-engine");
  const simulation = new Simulation();
  await simulation.start();
  return simulation;
}

/** Started once for all netlists of a test file: the start takes longer than most runs. */
let simulator: ReturnType<typeof started> | null = null;

/** Columns by name: magnitudes of an AC analysis, values of a transient one. */
export async function simulate(netlist: string): Promise<(name: string) => number[]> {
  const result = await silently(async () => {
    simulator ??= started();
    const simulation = await simulator;
    simulation.setNetList(netlist);
    return (await simulation.runSim()) as unknown as Result;
  });
  return (name) => {
    const column = result.data[result.variableNames.indexOf(name)];
    if (!column) throw new Error(`no ${name} among ${result.variableNames.join(", ")}`);
    return column.values.map((value) =>
      typeof value === "number" ? value : Math.hypot(value.real, value.img),
    );
  };
}

export function largest(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}
