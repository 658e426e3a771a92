import type { PolePair } from "./poles";

/** Difference of the two poles, Hz: how often energy goes to and fro between primary and secondary. */
export function beatFrequency({ lower, upper }: PolePair): number {
  return upper.frequency - lower.frequency;
}

/**
 * Time of the first maximum of the top voltage's envelope, s, after a drive midway between the poles
 * begins: each pole is off by half the beat, so the envelope goes as 1 − cos(π·beat·t).
 * Source: superposition of two driven resonances; lossless. Infinity where the poles coincide.
 */
export function firstTopVoltageMaximum(poles: PolePair): number {
  return 1 / beatFrequency(poles);
}
