/** Groups of pulses for a test on the bench, through the same limits as every score. */
import { type Change, type Gate, GateBuilder } from "./gate";
import { PATIENCE_IN_PERIODS } from "./gateSchedule";
import type { CoilLimits } from "./lane";
import { allowedOnTime } from "./noteOnTime";

export interface PulsePattern {
  /** Hz within a group */
  rate: number;
  /** s */
  onTime: number;
  /** pulses in a group */
  pulses: number;
  /** s from a group's last pulse to the next group's first, beyond the period */
  pause: number;
  groups: number;
}

export interface PatternGate {
  gate: Gate;
  /** s */
  duration: number;
  /** pulses that were requested, and those that were changed for each reason */
  asked: number;
  changed: Partial<Record<Change, number>>;
}

/** The gate of a pattern; nothing in it exceeds a limit. */
export function patternGate(pattern: PulsePattern, limits: CoilLimits): PatternGate {
  const { rate, onTime, pulses, pause, groups } = pattern;
  const builder = new GateBuilder(limits);
  const changed: PatternGate["changed"] = {};
  const allowed = Math.min(onTime, allowedOnTime(limits, rate));
  const groupTime = pulses / rate + pause;
  for (let group = 0; group < groups; group++)
    for (let pulse = 0; pulse < pulses; pulse++) {
      const time = group * groupTime + pulse / rate;
      const change =
        builder.offer(time, allowed, PATIENCE_IN_PERIODS / rate) ??
        (allowed < onTime ? "shortened by limit" : null);
      if (change) changed[change] = (changed[change] ?? 0) + 1;
    }
  return { gate: builder.gate, duration: groups * groupTime, asked: groups * pulses, changed };
}
