import type { Interrupter } from "../design-parts";
import type { CoilLoad } from "./coilLoad";
import type { CoilLimits } from "./lane";
import { noteLimits } from "./noteLimits";

/** Keys that a score can ask for, with room for bends and transposition. */
const LOWEST = 0;
const HIGHEST = 140;

/**
 * What a coil allows: its interrupter, and what its bursts cost.
 * @param load null where that is not known
 */
export function coilLimits(interrupter: Interrupter, voices: number, load: CoilLoad | null): CoilLimits {
  const { longestOnTime, shortestGap, dutyLimit, dutyWindow } = interrupter;
  const onTimeByRate = load
    ? noteLimits(interrupter, load, LOWEST, HIGHEST).map(({ rate, onTime }) => ({
        rate,
        onTime: onTime ?? 0,
      }))
    : [];
  return { longestOnTime, shortestGap, dutyLimit, dutyWindow, voices, onTimeByRate, load };
}
