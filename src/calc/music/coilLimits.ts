import type { Interrupter } from "../design-parts";
import type { CoilLimits } from "./lane";

/** What a coil's interrupter allows; the design's own burst limits are not part of it. */
export function coilLimits(interrupter: Interrupter, voices: number): CoilLimits {
  const { longestOnTime, shortestGap, dutyLimit, dutyWindow } = interrupter;
  return { longestOnTime, shortestGap, dutyLimit, dutyWindow, voices, onTimeByRate: [] };
}
