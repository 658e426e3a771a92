import type { BurstGroup, BurstOutcome } from "../evaluation/burst/burstResults";
import { type Domain, roundedDomain } from "./axis";

export const BURST_PARTS = ["whole burst", "first cycles", "last cycles"] as const;
export type BurstPart = (typeof BURST_PARTS)[number];

/** Cycles shown of a part of a burst. */
const CYCLES = 5;
/** Of these, cycles after the drive has ended. */
const CYCLES_AFTER = 2;
const STEPS = 8;

function end({ waveform }: BurstOutcome): number {
  return waveform.time[waveform.time.length - 1] ?? 0;
}

/** s, period of a cycle; without a full cycle, a fraction of the burst */
function cycleTime({ runningFrequency }: BurstOutcome, whole: number): number {
  return runningFrequency ? 1 / runningFrequency : whole / CYCLES;
}

/** The time span that is drawn, widened to round numbers. */
export function burstWindow(burst: BurstGroup, part: BurstPart): Domain {
  const whole = Math.max(end(burst), end(burst.unloaded));
  const cycle = cycleTime(burst, whole);
  if (part === "whole burst") return roundedDomain({ from: 0, to: whole }, STEPS);
  if (part === "first cycles") return roundedDomain({ from: 0, to: CYCLES * cycle }, STEPS);
  const last = burst.driveEnd + CYCLES_AFTER * cycle;
  return roundedDomain({ from: Math.max(0, last - CYCLES * cycle), to: last }, STEPS);
}
