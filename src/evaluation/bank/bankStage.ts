/** The bank of capacitors under the design's burst, repeated at its rate. */
import {
  type Arrangement,
  type BankDuty,
  proposeArrangements,
  rmsOfBursts,
  unitStress,
} from "../../calc/circuit/bank";
import type { BurstResult } from "../../calc/circuit/burstResult";
import type { DesignParts, Tank } from "../../calc/design-parts";
import { meanFrequency } from "../burst/burstOutcome";
import type { BankResult, TankResult } from "../driveResults";

/** Relative difference from the wanted capacitance that passes: the tap takes it up. */
const CAPACITANCE_TOLERANCE = 0.05;
/** Least limit over stress of a proposal; common practice, no source. */
const MARGIN = 1.2;
const MOST_PROPOSALS = 6;

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

function arrangements(
  { unit, wantedCapacitance, unitCost }: Tank,
  present: number,
  duty: BankDuty,
): Arrangement[] {
  const wanted = wantedCapacitance ?? present;
  // the same charge swings a smaller bank higher
  const scaled = { ...duty, peakVoltage: (duty.peakVoltage * present) / wanted };
  return proposeArrangements(unit, {
    capacitance: wanted,
    tolerance: CAPACITANCE_TOLERANCE,
    duty: scaled,
    margin: MARGIN,
    unitCost,
  }).slice(0, MOST_PROPOSALS);
}

export function tankResult(
  { tank, interrupter }: Pick<DesignParts, "tank" | "interrupter">,
  bank: BankResult,
  burst: BurstResult | null,
  resonance: number,
): TankResult {
  if (!burst) return { ...bank, ...NO_STRESS };
  const duty: BankDuty = {
    peakVoltage: burst.peakBankVoltage,
    peakCurrent: burst.peakPrimaryCurrent.value,
    rmsCurrent: rmsOfBursts(burst.squareCurrentTime, interrupter.repetitionRate),
    frequency: meanFrequency(burst) ?? resonance,
  };
  const stress = unitStress(tank, duty);
  return {
    ...bank,
    unitPeakVoltage: stress.peakVoltage,
    unitRmsVoltage: stress.rmsVoltage,
    unitPeakCurrent: stress.peakCurrent,
    unitRmsCurrent: stress.rmsCurrent,
    loss: burst.energy.bank * interrupter.repetitionRate,
    voltageMargin: stress.voltageMargin,
    peakCurrentMargin: stress.peakCurrentMargin,
    rmsCurrentMargin: stress.rmsCurrentMargin,
    arrangements: arrangements(tank, bank.capacitance, duty),
  };
}
