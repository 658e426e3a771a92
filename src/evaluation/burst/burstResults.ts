/** Results of one burst in time, in SI units. */
import type { RunningFrequency } from "../../calc/burst/burstResult";
import type { EnergyAccount } from "../../calc/burst/energyAccount";
import type { GateInterval, Waveform } from "../../calc/burst/record";

/** Peak values of each half cycle, with their times. */
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
  /** s after the start when the over-current limit is reached; null if it is not */
  limitTrips: number | null;
  /** s, when the last pair of switches turned off */
  driveEnd: number;
  /** s, when the primary current ended */
  primaryEnd: number;
  reservoirSag: number;
  /** Hz over the driven cycles; null if there is none */
  runningFrequency: number | null;
  runningPole: "lower" | "upper" | null;
  /** s, of the primary current's envelope; null if it only rises */
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
  /** V/m between primary and winding, mean over the shortest gap; null if no primary is clear of the winding */
  gapField: number | null;
}
