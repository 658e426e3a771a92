/** Whole bursts swept over the tap and the on-time: how much energy the spark gets, and at what peak current. */
import { burstCase, runBurst } from "../burst/burstCase";
import type { PrimarySolution } from "../coil/primary";
import type { SectionMutuals } from "../coil/sectionMutuals";
import type { DesignParts, Interrupter } from "../design-parts";
import { bankPeakCurrentRating } from "./bank";
import { type PrimaryCircuitParts, primaryCircuitAt } from "./primaryCircuit";
import { mutualsAtTap } from "./primaryMutuals";
import type { SecondaryCircuit } from "./secondaryCircuit";
import { pulseCurrentLimit } from "./switchLosses";
import { tapsAlong } from "./tuningCurve";

export interface EnergyPoint {
  /** turns */
  tap: number;
  /** s */
  onTime: number;
  /** J that one burst puts into the spark */
  sparkEnergy: number;
  /** A */
  peakPrimaryCurrent: number;
  /** whether the over-current limit was reached */
  limited: boolean;
}

export interface EnergySweep {
  /** by on-time and, within one, by tap */
  points: EnergyPoint[];
  /** s, the design's own */
  onTime: number;
  /** A, within the pulse ratings of both switches and bank */
  allowedCurrent: number;
  /** turns; null if no tap gives the spark any energy within the allowed current */
  mostEnergyTap: number | null;
  /** J, least energy of the taps that a clamp or the winding's tolerance may put in its place; null without one */
  leastBeside: number | null;
  /** turns on either side of it that these taps reach */
  beside: number;
}

/** Turns on either side of the best tap that a clamp and a winding's tolerance leave open; common practice, no source. */
const BESIDE_BEST = 0.06;
const TAPS = 40;
/** Steps on either side of a row's best tap that its second pass divides, and the taps that it puts into each. */
const DIVIDED_STEPS = 2;
const FINER_TAPS = 5;
const TAPS_OF_ROW = TAPS + 1 + 2 * DIVIDED_STEPS * FINER_TAPS;
/** Of the interrupter's longest on-time, swept beside the design's own. */
const ON_TIME_PARTS = [0.25, 0.5, 0.75, 1];
/** On-times that differ by less than this share of the longest are merged. */
const SAME_ON_TIME = 0.05;

/** A, within the pulse ratings of both switches and bank. */
export function allowedCurrent({ drive, tank }: Pick<DesignParts, "drive" | "tank">): number {
  return Math.min(pulseCurrentLimit(drive.switch), bankPeakCurrentRating(tank));
}

/** What all bursts of a sweep have in common. */
export interface SweptCoil {
  parts: Pick<DesignParts, "drive" | "spark">;
  circuit: PrimaryCircuitParts;
  solution: PrimarySolution;
  table: SectionMutuals;
  secondary: SecondaryCircuit;
  /** V */
  breakout: number | null;
  /** A */
  allowed: number;
}

/** Null if the tap is not on the conductor or the circuit has no burst. */
function energyPoint(coil: SweptCoil, tap: number, onTime: number): EnergyPoint | null {
  const primary = primaryCircuitAt(coil.solution, tap, coil.circuit);
  const mutuals = primary && mutualsAtTap(coil.table, coil.secondary, tap);
  if (!primary || !mutuals) return null;
  const parts = { ...coil.parts, onTime };
  const { options, ...burstAlone } = burstCase(parts, primary, coil.secondary, mutuals, coil.breakout, true);
  const burst = runBurst({ ...burstAlone, options: { ...options, waveform: false } });
  return (
    burst && {
      tap,
      onTime,
      sparkEnergy: Math.max(0, burst.energy.spark),
      peakPrimaryCurrent: burst.peakPrimaryCurrent.value,
      limited: burst.limitReachedAt !== null,
    }
  );
}

/** The design's own on-time first. */
function sweptOnTimes({ onTime, longestOnTime }: Pick<Interrupter, "onTime" | "longestOnTime">): number[] {
  const others = ON_TIME_PARTS.map((part) => part * longestOnTime);
  return [onTime, ...others.filter((other) => Math.abs(other - onTime) > SAME_ON_TIME * longestOnTime)];
}

/** The taps of the second pass, between those around the best of the first. */
function finerTaps(best: EnergyPoint, row: readonly EnergyPoint[]): number[] {
  const at = row.indexOf(best);
  const around = row.slice(Math.max(0, at - DIVIDED_STEPS), at + DIVIDED_STEPS + 1).map(({ tap }) => tap);
  return around.slice(1).flatMap((to, index) => {
    const from = around[index];
    return Array.from(
      { length: FINER_TAPS },
      (_, part) => from + ((to - from) * (part + 1)) / (FINER_TAPS + 1),
    );
  });
}

/** The point with most energy into the spark within a peak current; null if none gives any. */
export function mostEnergyPoint(points: readonly EnergyPoint[], allowedCurrent: number): EnergyPoint | null {
  return points
    .filter((point) => point.sparkEnergy > 0 && point.peakPrimaryCurrent <= allowedCurrent)
    .reduce<EnergyPoint | null>(
      (best, point) => (best && best.sparkEnergy >= point.sparkEnergy ? best : point),
      null,
    );
}

/** J, the least that a tap near the best one gives the spark. */
function leastBeside(row: readonly EnergyPoint[], best: EnergyPoint | null): number | null {
  if (!best) return null;
  const beside = row.filter(({ tap }) => Math.abs(tap - best.tap) <= BESIDE_BEST);
  return Math.min(...beside.map(({ sparkEnergy }) => sparkEnergy));
}

/** One row, with a second pass about its best tap. Yields after each burst. */
function* sweepRow(coil: SweptCoil, onTime: number): Generator<void, EnergyPoint[]> {
  const row: EnergyPoint[] = [];
  const passes = [
    () => tapsAlong(coil.solution.tube.turns, TAPS),
    () => {
      const best = mostEnergyPoint(row, coil.allowed);
      return best ? finerTaps(best, row) : [];
    },
  ];
  for (const taps of passes) {
    for (const tap of taps()) {
      const point = energyPoint(coil, tap, onTime);
      if (point) row.push(point);
      yield;
    }
  }
  return row.sort((a, b) => a.tap - b.tap);
}

/**
 * Sweeps whole bursts over all taps. It takes long, so it is a generator: after each burst it yields the share that is
 * done, 0 … 1, and a caller cancels it by not continuing.
 * @param onTimes "all": the design's own and others up to the interrupter's longest; "own": the design's own only
 */
export function* sweepBursts(
  coil: SweptCoil,
  interrupter: Pick<Interrupter, "onTime" | "longestOnTime">,
  onTimes: "all" | "own",
): Generator<number, EnergySweep> {
  const { onTime } = interrupter;
  const swept = onTimes === "all" ? sweptOnTimes(interrupter) : [onTime];
  const total = swept.length * TAPS_OF_ROW;
  const allowed = coil.allowed;
  let done = 0;
  const points: EnergyPoint[] = [];
  for (const each of swept) {
    const row = sweepRow(coil, each);
    let step = row.next();
    for (; !step.done; step = row.next()) yield ++done / total;
    points.push(...step.value);
  }
  const own = points.filter((point) => point.onTime === onTime);
  const best = mostEnergyPoint(own, allowed);
  return {
    points,
    onTime,
    allowedCurrent: allowed,
    mostEnergyTap: best?.tap ?? null,
    leastBeside: leastBeside(own, best),
    beside: BESIDE_BEST,
  };
}
