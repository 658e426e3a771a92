/** What one burst comes to when it is repeated at a rate in Hz. */

/** RMS over bursts and pauses from one burst's ∫i²dt, A. */
export function rmsOfBursts(squareCurrentTime: number, repetitionRate: number): number {
  return Math.sqrt(squareCurrentTime * repetitionRate);
}

/** W of an energy in J that each burst takes. */
export function averagePower(energy: number, repetitionRate: number): number {
  return energy * repetitionRate;
}

/** Part of the time that the bursts take, their on-times in s. */
export function dutyOf({ onTime, repetitionRate }: { onTime: number; repetitionRate: number }): number {
  return onTime * repetitionRate;
}
