/** The capacitor bank on its own, and loaded by the design's repeated bursts. */
import type { BurstResult } from "../../calc/burst/burstResult";
import { averagePower } from "../../calc/burst/burstResult";
import {
  bankCapacitance,
  bankDuty,
  bankVoltageRating,
  proposedBanks,
  unitCount,
  unitStress,
} from "../../calc/circuit/bank";
import type { PrimaryCircuit } from "../../calc/circuit/primaryCircuit";
import { characteristicImpedance } from "../../calc/circuit/resonance";
import type { DesignParts } from "../../calc/design-parts";
import { areSolvable } from "../solvable";
import { type BankResult, NO_STRESS, type TankResult } from "./bankResults";

/** Results of the units and the primary alone; null if their values cannot be computed with. */
export function bankResult(design: DesignParts, primary: PrimaryCircuit | null): BankResult | null {
  const { tank } = design;
  if (!areSolvable(design, ["tank"])) return null;
  const capacitance = bankCapacitance(tank);
  return {
    capacitance,
    peakVoltageRating: bankVoltageRating(tank),
    units: unitCount(tank),
    characteristicImpedance: primary && characteristicImpedance(primary.inductance, capacitance),
  };
}

/**
 * @param burst null if it cannot be computed; the bank's own results do not need it
 * @param resonance Hz, of the primary; used if a burst has no full cycle
 */
export function tankResult(
  design: DesignParts,
  bank: BankResult | null,
  burst: BurstResult | null,
  resonance: number,
): TankResult | null {
  const { tank, interrupter } = design;
  if (!bank || !burst || !areSolvable(design, ["interrupter"])) return bank && { ...bank, ...NO_STRESS };
  const duty = bankDuty(burst, interrupter.repetitionRate, resonance);
  const stress = unitStress(tank, duty);
  return {
    ...bank,
    unitPeakVoltage: stress.peakVoltage,
    unitRmsVoltage: stress.rmsVoltage,
    unitPeakCurrent: stress.peakCurrent,
    unitRmsCurrent: stress.rmsCurrent,
    loss: averagePower(burst.energy.bank, interrupter.repetitionRate),
    voltageMargin: stress.voltageMargin,
    peakCurrentMargin: stress.peakCurrentMargin,
    rmsCurrentMargin: stress.rmsCurrentMargin,
    arrangements: proposedBanks(tank, duty),
  };
}
