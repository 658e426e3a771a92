/** Stages of the primary: solved once for all taps, then read at the tap. */

import { bankCapacitance } from "../../calc/circuit/bankCapacitance";
import { resistivity } from "../../calc/coil/conductor";
import { profileMutual } from "../../calc/coil/coupling";
import { type PrimaryAtTap, type PrimarySolution, primaryAtTap, solvePrimary } from "../../calc/coil/primary";
import { conductorLength, heightAtTurn, radiusAtTurn } from "../../calc/coil/primaryGeometry";
import { primaryAcResistance } from "../../calc/coil/primaryLoss";
import { mutualAtTap, type SectionMutuals, sectionMutuals } from "../../calc/coil/sectionMutuals";
import type { DesignParts } from "../../calc/design-parts";
import type { CouplingResult, PrimaryResult, TurnRadius } from "../evaluation";
import type { SecondaryCircuit } from "../secondary/secondaryCircuit";
import { primaryShape, roundWireWinding, SECTIONS } from "../secondary/secondaryModes";
import { guarded, PRIMARY_CIRCUIT, PRIMARY_SHAPE, SECONDARY_SHAPE } from "../solvable";
import { stage } from "../stage";

export const primarySolutionStage = guarded(
  [...PRIMARY_SHAPE, "primary.wallThickness"],
  null,
  stage(
    (design) => ({
      tube: { ...primaryShape(design), wallThickness: design.primary.wallThickness },
      floorConducts: design.corrections.floorConducts,
    }),
    ({ tube, floorConducts }) => solvePrimary(tube, { floorConducts }),
  ),
);

export const sectionMutualsStage = guarded(
  SECONDARY_SHAPE,
  null,
  stage(
    (design) => ({ ...roundWireWinding(design), baseHeight: design.secondary.baseHeight }),
    (winding, solution: PrimarySolution | null): SectionMutuals | null =>
      solution ? sectionMutuals(solution, winding, SECTIONS) : null,
  ),
);

/** The primary circuit at a tap, as every later stage reads it. */
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

/** Number of switches that the primary current flows through at a time. */
function switchesInSeries(bridge: "half" | "full"): number {
  return bridge === "full" ? 2 : 1;
}

/** The parts of a design that make the primary circuit, tap aside. */
export type PrimaryCircuitParts = Pick<DesignParts, "tank" | "corrections"> & {
  leadInductance: number;
  temperature: number;
  bridge: "half" | "full";
  onStateResistance: number;
};

export function primaryCircuitParts({
  primary,
  tank,
  corrections,
  air,
  drive,
}: DesignParts): PrimaryCircuitParts {
  const { onStateResistance, parallelDevices } = drive.switch;
  return {
    tank,
    corrections,
    leadInductance: primary.leadInductance,
    temperature: air.temperature,
    bridge: drive.bridge,
    onStateResistance: onStateResistance / parallelDevices,
  };
}

/** The circuit at a tap; null where the tap is not on the conductor. */
export function primaryCircuitAt(
  solution: PrimarySolution,
  tap: number,
  parts: PrimaryCircuitParts,
): PrimaryCircuit | null {
  const atTap = primaryAtTap(solution, tap);
  if (!atTap) return null;
  const inductance = atTap.inductance + parts.leadInductance;
  const capacitance = bankCapacitance(parts.tank);
  const omega = 1 / Math.sqrt(inductance * capacitance);
  const resonance = omega / (2 * Math.PI);
  const allowance = 1 + parts.corrections.lossAllowance;
  const tube = primaryAcResistance(solution, tap, resonance, resistivity("copper", parts.temperature)) ?? 0;
  return {
    atTap,
    inductance,
    capacitance,
    resonance,
    resistance: {
      tube: tube * allowance,
      bank: (parts.tank.unit.dissipationFactor / (omega * capacitance)) * allowance,
      switches: parts.onStateResistance * switchesInSeries(parts.bridge) * allowance,
    },
  };
}

/** Ω of the whole loop. */
export function loopResistance({ tube, bank, switches }: PrimaryCircuit["resistance"]): number {
  return tube + bank + switches;
}

function turnRadii(solution: PrimarySolution): TurnRadius[] {
  const { turns } = solution.tube;
  const whole = Array.from({ length: Math.floor(turns) + 1 }, (_, turn) => turn);
  const places = turns > Math.floor(turns) ? [...whole, turns] : whole;
  return places.map((turn) => ({
    turn,
    radius: radiusAtTurn(solution.tube, turn),
    height: heightAtTurn(solution.tube, turn),
  }));
}

export const primaryResultStage = guarded(
  [...PRIMARY_CIRCUIT, "primary.tap"],
  null,
  stage(
    (design) => ({ tap: design.primary.tap, parts: primaryCircuitParts(design) }),
    (
      { tap, parts },
      solution: PrimarySolution | null,
    ): { circuit: PrimaryCircuit; result: PrimaryResult } | null => {
      const circuit = solution && primaryCircuitAt(solution, tap, parts);
      const full = solution && primaryAtTap(solution, solution.tube.turns);
      if (!solution || !circuit || !full) return null;
      const { atTap, inductance, resonance, resistance } = circuit;
      return {
        circuit,
        result: {
          inductance: atTap.inductance,
          fullInductance: full.inductance,
          lowFrequencyInductance: atTap.lowFrequencyInductance,
          resonance,
          conductorLength: atTap.conductorLength,
          fullConductorLength: conductorLength(solution.tube, solution.tube.turns),
          turnRadii: turnRadii(solution),
          freeEndVoltage: atTap.freeEndStepUp,
          acResistance: resistance.tube,
          qualityFactor: (2 * Math.PI * resonance * inductance) / loopResistance(resistance),
        },
      };
    },
  ),
);

/** Mutual inductances of the primary circuit at a tap. */
export interface MutualsAtTap {
  /** H, uniform secondary current */
  uniform: number;
  /** H, of each mode normalised to the top */
  modes: number[];
}

export function mutualsAtTap(
  table: SectionMutuals,
  secondary: SecondaryCircuit,
  tap: number,
): MutualsAtTap | null {
  const sections = mutualAtTap(table, tap);
  if (!sections) return null;
  return {
    uniform: sections.reduce((sum, value) => sum + value, 0),
    // normalised: the mode's circuit current is ωC at 1 V, so its mutual is ΣMI over that
    modes: secondary.modes.map(
      (mode) => profileMutual(sections, mode.current) / (2 * Math.PI * mode.resonance * mode.capacitance),
    ),
  };
}

export const couplingStage = stage(
  (design) => ({ tap: design.primary.tap }),
  (
    { tap },
    table: SectionMutuals | null,
    secondary: SecondaryCircuit | null,
    primary: { circuit: PrimaryCircuit } | null,
  ): { mutuals: MutualsAtTap; result: CouplingResult } | null => {
    const mutuals = table && secondary && mutualsAtTap(table, secondary, tap);
    if (!mutuals || !secondary || !primary) return null;
    const { atTap, inductance } = primary.circuit;
    const atResonance = mutuals.modes[0] / Math.sqrt(atTap.inductance * secondary.modes[0].inductance);
    return {
      mutuals,
      result: {
        uniformCurrent: mutuals.uniform / Math.sqrt(atTap.inductance * secondary.inductance),
        atResonance,
        circuit: atResonance * Math.sqrt(atTap.inductance / inductance),
        mutualInductance: mutuals.uniform,
      },
    };
  },
);
