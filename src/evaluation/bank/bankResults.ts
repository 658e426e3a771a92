/** What is computed of the bank of capacitors, in SI units. */
import type { Arrangement } from "../../calc/circuit/bank";

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

/** Of a bank without a burst. */
export const NO_STRESS: Omit<TankResult, keyof BankResult> = {
  unitPeakVoltage: null,
  unitRmsVoltage: null,
  unitPeakCurrent: null,
  unitRmsCurrent: null,
  loss: null,
  voltageMargin: null,
  peakCurrentMargin: null,
  rmsCurrentMargin: null,
  arrangements: [],
};
