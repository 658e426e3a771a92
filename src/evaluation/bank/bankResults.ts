/** Results of the bank of capacitors, in SI units. */
import type { Arrangement } from "../../calc/circuit/bank";

/** Results of the bank's units and the primary alone. */
export interface BankResult {
  capacitance: number;
  peakVoltageRating: number;
  units: number;
  /** null if the primary has no solution */
  characteristicImpedance: number | null;
}

/** The bank with the stress on each of its units by repeated bursts. */
export interface TankResult extends BankResult {
  unitPeakVoltage: number | null;
  unitRmsVoltage: number | null;
  unitPeakCurrent: number | null;
  unitRmsCurrent: number | null;
  /** W, of the whole bank */
  loss: number | null;
  /** limit over stress; null without stress */
  voltageMargin: number | null;
  peakCurrentMargin: number | null;
  rmsCurrentMargin: number | null;
  /** proposed banks of the same unit that keep every margin, fewest units first */
  arrangements: Arrangement[];
}

/** The stress without a burst. */
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
