/** How tones that sound together share the duty and the mean limits of a coil. */
import { longestWithin, valueAt } from "./burstCost";
import { type CoilLoad, meanTimeCurve } from "./coilLoad";
import type { CoilLimits } from "./lane";
import { allowedOnTime } from "./noteOnTime";

interface Tone {
  /** Hz */
  rate: number;
  /** s, as requested */
  onTime: number;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** Parts of the duty; a window may hold one pulse more of each tone than its rate has in it. */
function dutyDemand(tones: readonly Tone[], { dutyLimit, dutyWindow }: CoilLimits): number {
  return sum(tones.map(({ rate, onTime }) => (onTime * (rate + 1 / dutyWindow)) / dutyLimit));
}

function byDuty(tones: readonly Tone[], limits: CoilLimits): number[] {
  const demand = dutyDemand(tones, limits);
  return tones.map(({ onTime }) => (demand > 1 ? onTime / demand : Number.POSITIVE_INFINITY));
}

function byMeans(tones: readonly Tone[], load: CoilLoad): number[] {
  const curve = meanTimeCurve(load);
  const costs = tones.map(({ onTime }) => valueAt(curve, onTime));
  const demand = sum(tones.map(({ rate }, index) => costs[index] * (rate + 1 / load.window)));
  return costs.map((cost) => (demand > 1 ? longestWithin(curve, cost / demand) : Number.POSITIVE_INFINITY));
}

/**
 * Longest on-times, s, at which tones together keep duty and mean limits, each reduced by the same factor; otherwise
 * the first pulses of a window would take all, and a chord would stutter at the window's rate.
 * @returns Infinity if a tone need not be reduced
 */
export function sharedOnTimes(limits: CoilLimits, asked: readonly Tone[]): number[] {
  if (asked.length < 2) return asked.map(() => Number.POSITIVE_INFINITY);
  const tones = asked.map(({ rate, onTime }) => ({
    rate,
    onTime: Math.min(onTime, allowedOnTime(limits, rate)),
  }));
  const duty = byDuty(tones, limits);
  if (!limits.load) return duty;
  const means = byMeans(tones, limits.load);
  return duty.map((each, index) => Math.min(each, means[index]));
}
