/** The longest on-time that a coil allows at each repetition rate, and what limits it. */
import type { Interrupter } from "../design-parts";
import { costCurve, longestWithin } from "./burstCost";
import type { CoilLoad, Limiter } from "./coilLoad";
import { keyFrequency } from "./equalTemperament";
import { SHORTEST_PULSE } from "./gate";
import { repeatedRisePerHeat } from "./junctionTrack";

export interface NoteLimit {
  /** MIDI key */
  key: number;
  /** Hz */
  rate: number;
  /** s; null if not even the shortest pulse is allowed */
  onTime: number | null;
  limitedBy: Limiter;
}

/** s of on-time that leaves the gap to the next pulse. */
export function gapOnTime(rate: number, { shortestGap }: Interrupter): number {
  return Math.max(0, 1 / rate - shortestGap);
}

/**
 * s of on-time by which the duty is kept as the gate counts it: the pulse itself, those in the window that ends where
 * it begins, and what reaches into that window of one more.
 */
export function dutyOnTime(rate: number, { dutyLimit, dutyWindow }: Interrupter): number {
  const before = Math.floor(dutyWindow * rate);
  const clear = (before + 1) / rate - dutyWindow;
  const budget = dutyLimit * dutyWindow;
  const shared = budget / (before + 1);
  return shared <= clear ? shared : (budget + clear) / (before + 2);
}

/** Bursts that start within the worst window of the means. */
function burstsInWindow(rate: number, { window }: CoilLoad): number {
  return Math.floor(window * rate) + 1;
}

type MeanTime = "mainsTime" | "busTime" | "bankTime";

/** s of on-time at which bursts in a row use up one of the mean limits. */
export function meanOnTime(rate: number, load: CoilLoad, name: MeanTime): number {
  const curve = costCurve(load.costs, (cost) => cost[name]);
  return longestWithin(curve, load.window / burstsInWindow(rate, load));
}

/** K over the case at the worst moment of each burst of the table's on-times, repeated for ever; an upper estimate. */
export function repeatedJunctionRises(rate: number, { costs, thermal }: CoilLoad): number[] {
  return costs.map(({ switchHeat, junctionRise, lasts }) => {
    const before = switchHeat * repeatedRisePerHeat(thermal, 1 / rate, 1 / rate - lasts);
    return before + junctionRise;
  });
}

/** s of on-time at which the junction reaches its limit. */
export function junctionOnTime(rate: number, load: CoilLoad): number {
  const onTimes = load.costs.map(({ onTime }) => onTime);
  const values = repeatedJunctionRises(rate, load);
  return longestWithin({ onTimes, values }, load.junctionAllowance);
}

/** Every limit at a rate, s of on-time. */
function candidates(
  rate: number,
  interrupter: Interrupter,
  load: CoilLoad | null,
): { limiter: Limiter; onTime: number }[] {
  const own: { limiter: Limiter; onTime: number }[] = [
    { limiter: "longest on-time", onTime: interrupter.longestOnTime },
    { limiter: "shortest gap", onTime: gapOnTime(rate, interrupter) },
    { limiter: "duty", onTime: dutyOnTime(rate, interrupter) },
  ];
  if (!load) return own;
  return [
    ...own,
    ...load.ceilings,
    { limiter: "bank current", onTime: meanOnTime(rate, load, "bankTime") },
    { limiter: "mains current", onTime: meanOnTime(rate, load, "mainsTime") },
    { limiter: "bus voltage", onTime: meanOnTime(rate, load, "busTime") },
    { limiter: "junction", onTime: junctionOnTime(rate, load) },
  ];
}

/**
 * The longest on-time at a repetition rate. Every limit falls, or stays, as the rate rises.
 * @param rate Hz, above zero
 * @param load null if the load of the bursts is unknown: the interrupter's own limits alone
 */
export function rateLimit(
  rate: number,
  interrupter: Interrupter,
  load: CoilLoad | null,
): Omit<NoteLimit, "key"> {
  const least = candidates(rate, interrupter, load).reduce((a, b) => (b.onTime < a.onTime ? b : a));
  const onTime = least.onTime < SHORTEST_PULSE * 1e-9 ? null : least.onTime;
  return { rate, onTime, limitedBy: least.limiter };
}

/** G1 to C7, the range of usual scores. */
export const LOWEST_KEY = 31;
export const HIGHEST_KEY = 96;

/** The limits of each key from one to another, in equal temperament. */
export function noteLimits(
  interrupter: Interrupter,
  load: CoilLoad | null,
  lowest = LOWEST_KEY,
  highest = HIGHEST_KEY,
): NoteLimit[] {
  return Array.from({ length: highest - lowest + 1 }, (_, index) => {
    const key = lowest + index;
    return { key, ...rateLimit(keyFrequency(key), interrupter, load) };
  });
}
