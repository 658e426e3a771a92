/** A spark that grows while the burst lasts. */
import type { Network, SparkLoad } from "../circuit/network";
import { type BurstRecord, highestTopVoltage } from "./record";
import { modeVoltage, SPARK, storedEnergy, topVoltage } from "./system";

/**
 * The spark breaks out when the top first reaches a voltage and then grows at a constant rate to its full
 * length; its capacitance is proportional to the length, its resistance constant. Common practice, no source.
 */
export interface SparkGrowth {
  /** V at the top where it breaks out */
  breakoutVoltage: number;
  /** m/s */
  rate: number;
  /** m, full length; the network's load is the spark at this length */
  length: number;
}

/** A spark shorter than this share of its full length is neglected. */
const LEAST_PART = 1e-4;

/** A spark that grows in a burst. */
export interface GrowingSpark {
  growth: SparkGrowth;
  full: SparkLoad;
  /** s; Infinity before */
  brokeOutAt: number;
}

/** Null without a spark, or if it has its full length from the start. */
export function growingSpark(growth: SparkGrowth | undefined, full: SparkLoad | null): GrowingSpark | null {
  return growth && full ? { growth, full, brokeOutAt: Number.POSITIVE_INFINITY } : null;
}

/**
 * The load at a time after the breakout, as a part of the full one; null before.
 * @param since s, since the breakout; below 0 before it
 */
function grownLoad({ full, growth }: GrowingSpark, since: number): SparkLoad | null {
  if (!(since > 0) || !(growth.length > 0)) return null;
  const part = Math.min(1, (growth.rate * since) / growth.length);
  return part >= LEAST_PART ? { ...full, capacitance: full.capacitance * part } : null;
}

/** The load for the half cycle that begins at a time; null if it stays at the present one. */
export function nextLoad(
  spark: GrowingSpark,
  present: SparkLoad | null,
  record: BurstRecord,
  time: number,
): SparkLoad | null {
  if (present?.capacitance === spark.full.capacitance) return null;
  if (spark.brokeOutAt === Number.POSITIVE_INFINITY) {
    const highest = highestTopVoltage(record);
    if (highest.value < spark.growth.breakoutVoltage) return null;
    spark.brokeOutAt = highest.time;
  }
  return grownLoad(spark, time - spark.brokeOutAt);
}

/**
 * Updates the spark's load with its charge kept, and returns the stored energy that this releases, J:
 * it goes into the spark. A parallel load shares its charge with the modes it is connected across.
 */
export function renewLoad(before: Network, after: Network, x: Float64Array): number {
  // the bank's does not change with it
  const energy = storedEnergy(before, 0, x);
  const [old, renewed] = [before.load?.capacitance ?? 0, after.load?.capacitance ?? 0];
  if (after.load?.topology === "series") {
    x[SPARK] *= renewed > 0 ? old / renewed : 0;
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
