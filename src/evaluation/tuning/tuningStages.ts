/** Stages of the tuning: target frequency, suggested tap, and poles and coupling against the tap. */
import { sparkLoad } from "../../calc/circuit/coupledNetwork";
import { primaryCircuitParts, primaryResonanceAt } from "../../calc/circuit/primaryCircuit";
import type { SecondaryCircuit } from "../../calc/circuit/secondaryCircuit";
import { type TuningPoint, tuningCurve } from "../../calc/circuit/tuningCurve";
import {
  detuning,
  passesAsTuned,
  type SuggestedTap,
  tapFor,
  tuningTarget,
} from "../../calc/circuit/tuningTarget";
import type { PrimarySolution } from "../../calc/coil/primary";
import type { SectionMutuals } from "../../calc/coil/sectionMutuals";
import type { DesignParts } from "../../calc/design-parts";
import { guarded, PRIMARY_CIRCUIT } from "../solvable";
import type { SolvedCoil } from "../solvedCoil";
import { stage } from "../stage";
import type { TuningResult } from "./tuningResults";

function tapParts({ primary, tank }: DesignParts) {
  return { leadInductance: primary.leadInductance, tank };
}

/** Hz, resonance of the primary at a tap; null if the tap is unknown or not on the conductor. */
const resonanceAtTapStage = guarded(
  PRIMARY_CIRCUIT,
  null,
  stage(tapParts, (parts, solution: PrimarySolution | null, tap: number | null): number | null => {
    if (!solution || tap === null) return null;
    const resonance = primaryResonanceAt(solution, parts)(tap);
    return Number.isNaN(resonance) ? null : resonance;
  }),
);

const targetStage = guarded(
  ["spark", "tuningAim", "secondary.measuredResonance"],
  null,
  stage(
    ({ tuningAim, spark, secondary }) => ({ tuningAim, spark, measured: secondary.measuredResonance }),
    (
      { tuningAim, spark, measured },
      secondary: SecondaryCircuit | null,
      mostEnergyResonance: number | null,
    ): number | null => secondary && tuningTarget(tuningAim, spark, secondary, measured, mostEnergyResonance),
  ),
);

/** The tap for a target in Hz; null if the primary has no solution. */
export const suggestionStage = guarded(
  PRIMARY_CIRCUIT,
  null,
  stage(tapParts, (parts, solution: PrimarySolution | null, target: number | null): SuggestedTap | null => {
    if (!solution) return null;
    return target === null ? { tap: null, band: null } : tapFor(target, solution, parts);
  }),
);

const tuningCurveStage = guarded(
  [...PRIMARY_CIRCUIT, "spark"],
  null,
  stage(
    (design) => ({ circuit: primaryCircuitParts(design), spark: design.spark }),
    (
      { circuit, spark },
      solution: PrimarySolution | null,
      table: SectionMutuals | null,
      secondary: SecondaryCircuit | null,
    ): TuningPoint[] | null =>
      solution && table && secondary && tuningCurve(solution, table, secondary, circuit, sparkLoad(spark)),
  ),
);

/**
 * Target frequency of the primary, Hz; null if unknown.
 * @param knownTap turns, the tap with most energy into the spark; null if bursts have not been swept
 */
export function targetResonance(
  design: DesignParts,
  { solution, secondary }: Pick<SolvedCoil, "solution" | "secondary">,
  knownTap: number | null,
): number | null {
  return targetStage(design, secondary, resonanceAtTapStage(design, solution, knownTap));
}

/**
 * Everything about the tuning at the present tap.
 * @param knownTap turns, the tap with most energy into the spark; null if bursts have not been swept
 */
export function tuningResult(
  design: DesignParts,
  coil: Pick<SolvedCoil, "solution" | "mutuals" | "secondary" | "primary">,
  knownTap: number | null,
): TuningResult | null {
  const { solution, mutuals, secondary, primary } = coil;
  const target = targetResonance(design, coil, knownTap);
  const suggestion = suggestionStage(design, solution, target);
  const curve = tuningCurveStage(design, solution, mutuals, secondary);
  if (!suggestion || !curve) return null;
  const difference = primary && target !== null ? detuning(primary.resonance, target) : null;
  return {
    suggestedTap: suggestion.tap,
    suggestedTapBand: suggestion.band,
    targetResonance: target,
    detuning: difference,
    tuned: difference !== null && passesAsTuned(difference),
    curve,
  };
}
