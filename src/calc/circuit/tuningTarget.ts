/** The target frequency of the primary, and the tap that reaches it. */
import type { PrimarySolution } from "../coil/primary";
import type { Spark, TuningAim } from "../design-parts";
import { loadedResonance, sparkLoad } from "./coupledNetwork";
import { type PrimaryCircuitParts, primaryResonanceAt } from "./primaryCircuit";
import type { SecondaryCircuit } from "./secondaryCircuit";

/**
 * The tap at which the primary's resonance meets a frequency, by bisection: the resonance falls as the
 * tap moves out.
 * @param resonanceAt Hz at a tap, falling
 * @param from turns, innermost tap that is tried
 * @param to turns, outermost
 * @returns turns, null if no tap between the two meets the frequency
 */
export function suggestedTap(
  resonanceAt: (tap: number) => number,
  target: number,
  from: number,
  to: number,
): number | null {
  if (!(resonanceAt(from) >= target && resonanceAt(to) <= target)) return null;
  let [low, high] = [from, to];
  while (high - low > 1e-9 * high) {
    const middle = 0.5 * (low + high);
    if (resonanceAt(middle) > target) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}

const INNERMOST_TAP = 0.5;
/** Relative difference of the two resonances that counts as tuned: a tenth of a usual half bandwidth. */
const TUNED_WITHIN = 0.003;
/** Tolerance of a usual winding's resonance; common practice, no source. */
const WINDING_TOLERANCE = 0.01;

/** Target frequency of the primary, without regard to a measured resonance. */
function computedTarget(
  aim: TuningAim,
  spark: Spark,
  secondary: Pick<SecondaryCircuit, "modes">,
  mostEnergyResonance: number | null,
): number | null {
  if (aim.kind === "most energy") return mostEnergyResonance;
  return loadedResonance(secondary, sparkLoad(spark, aim.kind === "spark" ? aim.length : 0));
}

/**
 * Target frequency of the primary, Hz; a measured resonance replaces the computed one.
 * @param measured Hz, the secondary's, without a spark; null for none
 * @param mostEnergyResonance Hz of the primary at the tap with most energy into the spark; null if unknown
 * @returns null if bursts have not been swept for the aim "most energy"
 */
export function tuningTarget(
  aim: TuningAim,
  spark: Spark,
  secondary: Pick<SecondaryCircuit, "modes">,
  measured: number | null,
  mostEnergyResonance: number | null,
): number | null {
  const target = computedTarget(aim, spark, secondary, mostEnergyResonance);
  if (target === null || measured === null) return target;
  return (measured * target) / secondary.modes[0].resonance;
}

export interface SuggestedTap {
  /** turns; null if no tap reaches the target */
  tap: number | null;
  /** the range of taps due to the winding's tolerance */
  band: { low: number; high: number } | null;
}

/** The tap for a frequency in Hz, and the range of taps due to the winding's tolerance. */
export function tapFor(
  target: number,
  solution: PrimarySolution,
  parts: Pick<PrimaryCircuitParts, "leadInductance" | "tank">,
): SuggestedTap {
  const { turns } = solution.tube;
  const resonanceAt = primaryResonanceAt(solution, parts);
  const innermost = Math.min(INNERMOST_TAP, turns);
  const [tap, low, high] = [1, 1 + WINDING_TOLERANCE, 1 - WINDING_TOLERANCE].map((factor) =>
    suggestedTap(resonanceAt, target * factor, innermost, turns),
  );
  return { tap, band: tap === null ? null : { low: low ?? innermost, high: high ?? turns } };
}

/** Relative difference of the primary's resonance from the target. */
export function detuning(resonance: number, target: number): number {
  return resonance / target - 1;
}

/** Whether a relative difference counts as tuned. */
export function passesAsTuned(difference: number): boolean {
  return Math.abs(difference) <= TUNED_WITHIN;
}
