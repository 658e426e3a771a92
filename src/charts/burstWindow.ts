import type { BurstGroup, BurstOutcome } from "../evaluation/burst/burstResults";
import { type Domain, roundedDomain } from "./axis";

export const BURST_PARTS = ["whole burst", "first cycles", "last cycles"] as const;
export type BurstPart = (typeof BURST_PARTS)[number];

/** Cycles in sight in a part of a burst. */
const CYCLES = 5;
/** Of them, after the drive has ended. */
const CYCLES_AFTER = 2;
const STEPS = 8;

function end({ waveform }: BurstOutcome): number {
  return waveform.time[waveform.time.length - 1] ?? 0;
}

/** s that a cycle takes; where none was driven in full, a few make up the burst */
function cycleTime({ runningFrequency }: BurstOutcome, whole: number): number {
  return runningFrequency ? 1 / runningFrequency : whole / CYCLES;
}

/** The stretch of time that is drawn, at round numbers. */
export function burstWindow(burst: BurstGroup, part: BurstPart): Domain {
  const whole = Math.max(end(burst), end(burst.unloaded));
  const cycle = cycleTime(burst, whole);
  if (part === "whole burst") return roundedDomain({ from: 0, to: whole }, STEPS);
  if (part === "first cycles") return roundedDomain({ from: 0, to: CYCLES * cycle }, STEPS);
  const last = burst.driveEnd + CYCLES_AFTER * cycle;
  return roundedDomain({ from: Math.max(0, last - CYCLES * cycle), to: last }, STEPS);
}
