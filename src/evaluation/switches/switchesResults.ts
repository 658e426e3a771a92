/** What is computed of the switches, their gates and their commutation, in SI units. */
import type { OrNull } from "../orNull";

/** What the design's burst, repeated at its rate, makes of one device. */
export interface SwitchesUnderBurst {
  /** K, absolute: at the worst moment of a burst among many, and on average */
  junctionTemperature: number;
  meanJunctionTemperature: number;
  /** K within one burst */
  junctionRise: number;
  junctionMargin: number;
  /** of one device: W, J a burst, A */
  switchPower: number;
  conductionEnergy: number;
  turnOffEnergy: number;
  switchPeakCurrent: number;
  /** A of one device, largest; the burst's last turn-off, which comes when the on-time says, included */
  turnOffCurrent: number;
  /** the same with that last one left out */
  commutationCurrent: number;
  /** A; null without a gate resistance */
  gatePeakCurrent: number | null;
  gatePower: number;
  /** s, lead times with which a pair goes off, or the next comes on, at the current's zero */
  leadAtZero: number | null;
  leadAcrossDeadTime: number | null;
  longestDeadTime: number | null;
  /** s from turn-off to the current's zero; below 0 where the pair goes off late */
  turnOffAdvance: number | null;
}

export type SwitchesResult = OrNull<SwitchesUnderBurst>;
