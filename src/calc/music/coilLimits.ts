import type { Interrupter } from "../design-parts";
import type { CoilLoad } from "./coilLoad";
import type { CoilLimits } from "./lane";
import { noteLimits } from "./noteLimits";

/** Keys that a score can ask for, with room for bends and transposition. */
const LOWEST = 0;
const HIGHEST = 140;

/**
 * The limits of a coil: those of its interrupter, and the load of its bursts.
 * @param load null if unknown
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
