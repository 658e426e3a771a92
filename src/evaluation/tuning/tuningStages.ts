import { bankCapacitance } from "../../calc/circuit/bankCapacitance";
import { losslessPoles } from "../../calc/circuit/losslessPoles";
import type { Network } from "../../calc/circuit/network";
import { type PolePair, polePair } from "../../calc/circuit/poles";
import { suggestedTap } from "../../calc/circuit/suggestedTap";
import { type PrimarySolution, primaryAtTap } from "../../calc/coil/primary";
import type { SectionMutuals } from "../../calc/coil/sectionMutuals";
import type { DesignParts, Spark, Tank, TuningAim } from "../../calc/design-parts";
import type { TuningPoint, TuningResult } from "../evaluation";
import {
  mutualsAtTap,
  type PrimaryCircuit,
  type PrimaryCircuitParts,
  primaryCircuitAt,
  primaryCircuitParts,
} from "../primary/primaryStages";
import { loadedResonance, networkOf, sparkLoad } from "../response/coupledNetwork";
import type { SecondaryCircuit } from "../secondary/secondaryCircuit";
import { guarded, PRIMARY_CIRCUIT } from "../solvable";
import { stage } from "../stage";

const INNERMOST_TAP = 0.5;
const FEWEST_POINTS = 24;
const POINTS_PER_TURN = 6;
const MOST_POINTS = 72;
/** Relative difference of the two resonances that passes as tuned: a tenth of a usual half bandwidth. */
const TUNED_WITHIN = 0.003;
/** Tolerance of a usual winding's resonance; common practice, no source. */
const WINDING_TOLERANCE = 0.01;

/** Frequency that the primary is tuned to, a measured resonance left aside; null while bursts are not swept. */
function wantedResonance(
  aim: TuningAim,
  spark: Spark,
  secondary: SecondaryCircuit,
  mostEnergyResonance: number | null,
): number | null {
  if (aim.kind === "most energy") return mostEnergyResonance;
  return loadedResonance(secondary, sparkLoad(spark, aim.kind === "spark" ? aim.length : 0));
}

/**
 * Frequency that the primary is tuned to; a measured resonance takes the computed one's place.
 * @param mostEnergyResonance Hz of the primary where bursts give the spark most energy; null while it is not known
 */
export const targetStage = guarded(
  ["spark", "tuningAim", "secondary.measuredResonance"],
  null,
  stage(
    ({ tuningAim, spark, secondary }) => ({ tuningAim, spark, measured: secondary.measuredResonance }),
    (
      { tuningAim, spark, measured },
      secondary: SecondaryCircuit | null,
      mostEnergyResonance: number | null,
    ): number | null => {
      const wanted = secondary && wantedResonance(tuningAim, spark, secondary, mostEnergyResonance);
      if (!secondary || wanted === null) return null;
      return measured === null ? wanted : (measured * wanted) / secondary.modes[0].resonance;
    },
  ),
);

function resonanceAtTap(
  solution: PrimarySolution,
  leadInductance: number,
  capacitance: number,
): (tap: number) => number {
  return (tap) => {
    const inductance = primaryAtTap(solution, tap)?.inductance ?? Number.NaN;
    return 1 / (2 * Math.PI * Math.sqrt((inductance + leadInductance) * capacitance));
  };
}

interface TapParts {
  leadInductance: number;
  tank: Tank;
}

function tapParts({ primary, tank }: DesignParts): TapParts {
  return { leadInductance: primary.leadInductance, tank };
}

/** Hz of the primary at a tap; null where the tap is not known or not on the conductor. */
export const resonanceAtTapStage = guarded(
  PRIMARY_CIRCUIT,
  null,
  stage(
    tapParts,
    ({ leadInductance, tank }, solution: PrimarySolution | null, tap: number | null): number | null => {
      if (!solution || tap === null) return null;
      const resonance = resonanceAtTap(solution, leadInductance, bankCapacitance(tank))(tap);
      return Number.isNaN(resonance) ? null : resonance;
    },
  ),
);

/** Where the primary meets the aim, and within which taps the winding's tolerance puts it. */
export const suggestionStage = guarded(
  PRIMARY_CIRCUIT,
  null,
  stage(tapParts, ({ leadInductance, tank }, solution: PrimarySolution | null, target: number | null) => {
    if (!solution) return null;
    if (target === null) return { suggestedTap: null, suggestedTapBand: null };
    const resonance = resonanceAtTap(solution, leadInductance, bankCapacitance(tank));
    const innermost = Math.min(INNERMOST_TAP, solution.tube.turns);
    const at = (frequency: number): number | null =>
      suggestedTap(resonance, frequency, innermost, solution.tube.turns);
    const [tap, low, high] = [1, 1 + WINDING_TOLERANCE, 1 - WINDING_TOLERANCE].map((factor) =>
      at(target * factor),
    );
    const band = tap === null ? null : { low: low ?? innermost, high: high ?? solution.tube.turns };
    return { suggestedTap: tap, suggestedTapBand: band };
  }),
);

function curveTaps(turns: number): number[] {
  const count = Math.min(MOST_POINTS, Math.max(FEWEST_POINTS, Math.round(turns * POINTS_PER_TURN)));
  const first = Math.min(1, turns / 2);
  return Array.from({ length: count + 1 }, (_, index) =>
    index === count ? turns : first + ((turns - first) * index) / count,
  );
}

interface CurveParts {
  circuit: PrimaryCircuitParts;
  spark: DesignParts["spark"];
}

function polesNear(network: Network, before: PolePair | null): PolePair | null {
  const guess: [number, number] | undefined = before
    ? [2 * Math.PI * before.lower.frequency, 2 * Math.PI * before.upper.frequency]
    : undefined;
  return (guess && polePair(network, guess)) ?? polePair(network);
}

/** Poles and coupling against the tap. */
export const tuningCurveStage = guarded(
  [...PRIMARY_CIRCUIT, "spark"],
  null,
  stage(
    (design): CurveParts => ({ circuit: primaryCircuitParts(design), spark: design.spark }),
    (
      { circuit, spark },
      solution: PrimarySolution | null,
      table: SectionMutuals | null,
      secondary: SecondaryCircuit | null,
    ): TuningPoint[] | null => {
      if (!solution || !table || !secondary) return null;
      const load = sparkLoad(spark, spark.length);
      let loaded: PolePair | null = null;
      return curveTaps(solution.tube.turns).flatMap((tap): TuningPoint[] => {
        const primary: PrimaryCircuit | null = primaryCircuitAt(solution, tap, circuit);
        const mutuals = primary && mutualsAtTap(table, secondary, tap);
        if (!primary || !mutuals) return [];
        const network = networkOf(primary, secondary, mutuals, load);
        const bare = losslessPoles(network);
        loaded = polesNear(network, loaded);
        if (!loaded) return [];
        return [
          {
            tap,
            primaryResonance: primary.resonance,
            lowerPole: bare.lower,
            upperPole: bare.upper,
            loadedLowerPole: loaded.lower.frequency,
            loadedUpperPole: loaded.upper.frequency,
            coupling: mutuals.modes[0] / Math.sqrt(primary.atTap.inductance * secondary.modes[0].inductance),
          },
        ];
      });
    },
  ),
);

/** Everything about the tuning at the present tap. */
export function tuningResult(
  suggestion: Pick<TuningResult, "suggestedTap" | "suggestedTapBand"> | null,
  target: number | null,
  primary: PrimaryCircuit | null,
  curve: TuningPoint[] | null,
): TuningResult | null {
  if (!suggestion || !curve) return null;
  const detuning = primary && target !== null ? primary.resonance / target - 1 : null;
  return {
    ...suggestion,
    targetResonance: target,
    detuning,
    tuned: detuning !== null && Math.abs(detuning) <= TUNED_WITHIN,
    curve,
  };
}
