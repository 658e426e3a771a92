/** The primary circuit at a tap: conductor, leads, bank and switches in one loop. */
import { resistivity } from "../coil/conductor";
import { type PrimaryAtTap, type PrimarySolution, primaryAtTap } from "../coil/primary";
import { primaryAcResistance } from "../coil/primaryLoss";
import type { DesignParts } from "../design-parts";
import { bankCapacitance, dissipationResistance } from "./bank";
import { resonance } from "./resonance";
import { onStateLoopResistance } from "./switchLosses";

export interface PrimaryCircuit {
  atTap: PrimaryAtTap;
  /** H, leads included */
  inductance: number;
  /** F */
  capacitance: number;
  /** Hz, uncoupled */
  resonance: number;
  /** Ω of the tube, the bank and the switches */
  resistance: { tube: number; bank: number; switches: number };
}

/** The parts of a design that make the primary circuit, tap aside. */
export type PrimaryCircuitParts = Pick<DesignParts, "tank" | "corrections"> & {
  leadInductance: number;
  temperature: number;
  /** Ω that the switches put into the loop */
  switchResistance: number;
};

export function primaryCircuitParts({
  primary,
  tank,
  corrections,
  air,
  drive,
}: DesignParts): PrimaryCircuitParts {
  return {
    tank,
    corrections,
    leadInductance: primary.leadInductance,
    temperature: air.temperature,
    switchResistance: onStateLoopResistance(drive),
  };
}

/** The circuit at a tap, turns; null if the tap is not on the conductor. */
export function primaryCircuitAt(
  solution: PrimarySolution,
  tap: number,
  { tank, corrections, leadInductance, temperature, switchResistance }: PrimaryCircuitParts,
): PrimaryCircuit | null {
  const atTap = primaryAtTap(solution, tap);
  if (!atTap) return null;
  const inductance = atTap.inductance + leadInductance;
  const capacitance = bankCapacitance(tank);
  const frequency = resonance(inductance, capacitance);
  const allowance = 1 + corrections.lossAllowance;
  const tube = primaryAcResistance(solution, tap, frequency, resistivity("copper", temperature)) ?? 0;
  const bank = dissipationResistance({ ...tank.unit, capacitance }, frequency);
  return {
    atTap,
    inductance,
    capacitance,
    resonance: frequency,
    resistance: { tube: tube * allowance, bank: bank * allowance, switches: switchResistance * allowance },
  };
}

/** Ω of the whole loop. */
export function loopResistance({ tube, bank, switches }: PrimaryCircuit["resistance"]): number {
  return tube + bank + switches;
}

/** Hz of the primary, uncoupled, at a tap in turns; NaN if the tap is not on the conductor. */
export function primaryResonanceAt(
  solution: PrimarySolution,
  { leadInductance, tank }: Pick<PrimaryCircuitParts, "leadInductance" | "tank">,
): (tap: number) => number {
  const capacitance = bankCapacitance(tank);
  return (tap) => {
    const inductance = primaryAtTap(solution, tap)?.inductance ?? Number.NaN;
    return resonance(inductance + leadInductance, capacitance);
  };
}
