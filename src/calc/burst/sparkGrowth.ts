/** A spark that grows while the burst lasts. */

import type { Network, SparkLoad } from "../circuit/network";
import { modeVoltage, storedEnergy, TIP, topVoltage } from "./system";

/**
 * The spark breaks out when the top first reaches a voltage and then grows at a constant rate to its full
 * length; its capacitance goes with the length, its resistance stays. Common practice, no source.
 */
export interface SparkGrowth {
  /** V at the top where it breaks out */
  breakoutVoltage: number;
  /** m/s */
  rate: number;
  /** m, full length; the network's load is the spark at this length */
  length: number;
}

/** A spark shorter than this part of its full length is none. */
const LEAST_PART = 1e-4;

/**
 * The load at a time after the breakout, as a part of the full one; null before.
 * @param since s, since the breakout; below 0 before it
 */
export function grownLoad(full: SparkLoad | null, growth: SparkGrowth, since: number): SparkLoad | null {
  if (!full || !(since > 0) || !(growth.length > 0)) return null;
  const part = Math.min(1, (growth.rate * since) / growth.length);
  return part >= LEAST_PART ? { ...full, capacitance: full.capacitance * part } : null;
}

/**
 * Renews the spark's load with its charge kept, and gives back the stored energy that this sets free, J:
 * it goes into the spark. A parallel load shares its charge with the modes it stands across.
 */
export function renewLoad(before: Network, after: Network, x: Float64Array): number {
  // the bank's does not change with it
  const energy = storedEnergy(before, 0, x);
  const [old, renewed] = [before.load?.capacitance ?? 0, after.load?.capacitance ?? 0];
  if (after.load?.topology === "series") {
    x[TIP] *= renewed > 0 ? old / renewed : 0;
  } else {
    const elastance = after.modes.reduce((sum, { capacitance }) => sum + 1 / capacitance, 0);
    const voltage = topVoltage(after.modes.length, x);
    const moved = ((renewed - old) * voltage) / (1 + renewed * elastance);
    after.modes.forEach(({ capacitance }, mode) => {
      x[modeVoltage(mode)] -= moved / capacitance;
    });
  }
  return energy - storedEnergy(after, 0, x);
}
