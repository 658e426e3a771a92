/** What is computed of one burst in time, in SI units. */
import type { RunningFrequency } from "../../calc/burst/burstResult";
import type { EnergyAccount } from "../../calc/burst/energyAccount";
import type { GateInterval, Waveform } from "../../calc/burst/record";

/** Largest values of each half cycle, at their times. */
export interface Envelope {
  /** s */
  time: number[];
  /** A */
  primaryCurrent: number[];
  /** V */
  topVoltage: number[];
}

/** One burst at the design's on-time, from rest and a full reservoir. */
export interface BurstOutcome {
  peakPrimaryCurrent: number;
  peakTopVoltage: number;
  peakBaseCurrent: number;
  /** V across the whole bank */
  peakBankVoltage: number;
  /** s after the start when the over-current limit is reached; null where it is not */
  limitTrips: number | null;
  /** s, when the last pair of switches went off */
  driveEnd: number;
  /** s, when the primary current had ended */
  primaryEnd: number;
  reservoirSag: number;
  /** Hz over the driven cycles; null where there is not one */
  runningFrequency: number | null;
  runningPole: "lower" | "upper" | null;
  /** s, of the primary current's envelope; null where it only rises */
  firstBeatMinimum: number | null;
  energy: EnergyAccount;
  frequencyByCycle: RunningFrequency[];
  gates: GateInterval[];
  waveform: Waveform;
  envelope: Envelope;
}

export interface BurstGroup extends BurstOutcome {
  /** the same without the spark */
  unloaded: BurstOutcome;
  /** V/m along the winding at the peak top voltage, largest */
  windingGradient: number;
  /** V/m between primary and winding, mean over the shortest gap; null without a primary that stands free */
  gapField: number | null;
}
