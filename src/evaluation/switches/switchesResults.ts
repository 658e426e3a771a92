/** Results of the switches, their gates and their commutation, in SI units. */
import type { OrNull } from "../orNull";

/** Load of the design's repeated bursts on one device. */
export interface SwitchesUnderBurst {
  /** K, absolute: at the worst moment of repeated bursts, and on average */
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
  /** A, largest of one device, including the burst's last turn-off, which the on-time determines */
  turnOffCurrent: number;
  /** the same without the last one */
  commutationCurrent: number;
  /** A; null without a gate resistance */
  gatePeakCurrent: number | null;
  gatePower: number;
  /** s, lead times with which a pair turns off, or the next turns on, at the current's zero */
  leadAtZero: number | null;
  leadAcrossDeadTime: number | null;
  longestDeadTime: number | null;
  /** s from turn-off to the current's zero; negative if the pair turns off late */
  turnOffAdvance: number | null;
}

export type SwitchesResult = OrNull<SwitchesUnderBurst>;
