/** ngspice in its npm build, loaded beforehand, so that its runs alone are measured. */
import { Simulation } from "eecircuit-engine";

const simulation = new Simulation();

/** Runs without what ngspice has to say. */
async function silently<Value>(run: () => Promise<Value>): Promise<Value> {
  const { error } = console;
  console.error = () => {};
  try {
    return await run();
  } finally {
    console.error = error;
  }
}

/** A run of a netlist. */
export async function ngspice(netlist: string): Promise<() => Promise<number>> {
  await simulation.start();
  return () =>
    silently(async () => {
      simulation.setNetList(netlist);
      return (await simulation.runSim()).numPoints;
    });
}
