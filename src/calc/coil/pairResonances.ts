/**
 * Resonances of two coupled coils without loss.
 *
 * With the circuits' charges scaled by √L both equations of motion read
 * (ω₁² − ω²)·n₁ + (k_e·ω₁ω₂ − k_m·ω²)·n₂ = 0 and its mirror.
 * Source: landauLifshitz, § 23; terman1943, sec. 3, coupled circuits.
 */
import type { PairCoupling, PairedCoil } from "./pairCoupling";

type Resonator = Pick<PairedCoil, "resonance" | "capacitance">;
type Coefficients = Pick<PairCoupling, "magnetic" | "capacitive">;

/** Natural frequencies of the pair, Hz: tops swinging in phase, and opposed. */
export interface SplitResonances {
  inPhase: number;
  opposed: number;
}

/** Coupling coefficients below 1. */
export function splitResonances(
  first: Resonator,
  second: Resonator,
  { magnetic, capacitive }: Coefficients,
): SplitResonances {
  const [a, b] = [first.resonance ** 2, second.resonance ** 2];
  const geometric = first.resonance * second.resonance;
  const half = 0.5 * (a + b) - capacitive * magnetic * geometric;
  const lead = 1 - magnetic * magnetic;
  const root = Math.sqrt(Math.max(0, half * half - lead * a * b * (1 - capacitive * capacitive)));
  const [lower, upper] = [Math.sqrt((half - root) / lead), Math.sqrt((half + root) / lead)];
  // equal signs raise the frequency where the charges' repulsion outweighs the shared flux
  return capacitive >= magnetic ? { inPhase: upper, opposed: lower } : { inPhase: lower, opposed: upper };
}

/**
 * Resonance of a coil beside another that is held at the same top voltage, Hz: what its primary meets
 * while both play.
 * @param sense 1 in phase, −1 opposed
 */
export function resonanceBeside(
  coil: Resonator,
  other: Resonator,
  { magnetic, capacitive }: Coefficients,
  sense: 1 | -1,
): number {
  const weight = (sense * Math.sqrt(other.capacitance / coil.capacitance) * coil.resonance) / other.resonance;
  const stiffness = coil.resonance ** 2 + capacitive * coil.resonance * other.resonance * weight;
  return Math.sqrt(stiffness / (1 + magnetic * weight));
}

/** The aim of a coil's tuning beside the other, Hz: it moves as the resonance does. */
export function aimBeside(aim: number, resonance: number, beside: number): number {
  return (aim * beside) / resonance;
}
