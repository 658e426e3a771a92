/** Results of one burst in time, and what it asks of bank, supply, switches and current limit; all SI. */
import type { Arrangement } from "../calc/circuit/bank";
import type { GateInterval, Waveform } from "../calc/circuit/burstRecord";
import type { RunningFrequency } from "../calc/circuit/burstResult";
import type { SenseProposal } from "../calc/circuit/currentTransformer";
import type { EnergyAccount } from "../calc/circuit/energyAccount";

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

/** Of the bank of capacitors, what follows from its units and the primary alone. */
export interface BankResult {
  capacitance: number;
  peakVoltageRating: number;
  units: number;
  /** null while the primary has no solution */
  characteristicImpedance: number | null;
}

/** The bank with what the burst, repeated, asks of each of its units. */
export interface TankResult extends BankResult {
  unitPeakVoltage: number | null;
  unitRmsVoltage: number | null;
  unitPeakCurrent: number | null;
  unitRmsCurrent: number | null;
  /** W, of the whole bank */
  loss: number | null;
  /** limit over stress; null where there is no stress */
  voltageMargin: number | null;
  peakCurrentMargin: number | null;
  rmsCurrentMargin: number | null;
  /** banks of the same unit that would do within every margin, fewest units first */
  arrangements: Arrangement[];
}

/** What follows from the drive's own parts, whatever the coil on it. */
export interface DriveAtRest {
  /** V at no load */
  busVoltage: number;
  duty: number;
  reservoirEnergy: number;
  /** A into the empty reservoir, without and with the pre-charge resistor */
  inrushCurrent: number | null;
  prechargeCurrent: number;
  prechargeTime: number;
  prechargeEnergy: number;
  /** s to 60 V through the discharge resistor, and its power at the full bus */
  dischargeTime: number;
  dischargePower: number;
  transformerRatio: number;
  /** V at the comparator where the over-current limit is reached */
  limitVoltageAtComparator: number;
  senseProposal: SenseProposal;
}

/** What the design's burst, repeated at its rate, makes of the drive. */
export interface DriveUnderBurst {
  /** W taken from the reservoir at the repetition rate */
  averagePower: number;
  /** V, mean and least of the bus under that power */
  meanBusVoltage: number;
  lowestBusVoltage: number;
  busRipple: number;
  /** A, largest of the rectifier's pulses */
  chargingCurrent: number;
  /** A RMS in a line, and what follows from it; null for a bench supply, whose mains side is its own */
  mainsCurrent: number | null;
  apparentPower: number | null;
  powerFactor: number | null;
  carriesLoad: boolean;
  /** A; a hint for the licensed person; null where the circuit's own rating is below it, and for a bench supply */
  fuseHint: number | null;
  reservoirRmsCurrent: number;

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

  peakVoltageAtComparator: number;
  burdenPower: number;
  /** T, of the core that is worked hardest, at the larger of limit and peak */
  coreFluxDensity: number | null;
}

type OrNull<Results> = { [Name in keyof Results]: Results[Name] | null };

/** What stands under the burst is null while there is none. */
export type DriveResult = DriveAtRest & OrNull<DriveUnderBurst>;
