/**
 * Coupling of two coils side by side, each in its own fundamental: the energies that their unchanged
 * currents and charges have with each other, which is first order in the coupling.
 *
 * | symbol | code name | meaning | unit |
 * | M₁₂ | mutualInductance | of the modes, for currents that carry the modes' charge | H |
 * | P₁₂ | mutualElastance | interaction energy over the product of the modes' charges | 1/F |
 * | k_m | magnetic | M₁₂/√(L₁L₂) | 1 |
 * | k_e | capacitive | P₁₂·√(C₁C₂) | 1 |
 *
 * Convention: both wound in the same sense, both top voltages of the same sign. Side by side k_m is
 * then negative and k_e positive.
 * Source: as in `parallelAxisLoops`, Neumann's integral; maxwell1873, art. 86–87 (mutual elastance by
 * superposition); landauLifshitz, § 23 (coupling of modes by energy).
 */

import { parallelAxisMutualInductance } from "../field/parallelAxisLoops";
import { parallelAxisInverseDistance } from "../field/parallelAxisRings";
import { COULOMB_CONSTANT } from "../field/ringPotential";
import type { ChargeRing } from "./chargeRings";
import { couplingCoefficient } from "./coupling";

/** One coil of a pair in its fundamental. */
export interface PairedCoil {
  /** m, of the winding */
  radius: number;
  /** m above the ground plane */
  lowerEnd: number;
  /** m */
  windingLength: number;
  turns: number;
  /** A of equal sections from the lower end, at 1 V at the top */
  current: readonly number[];
  rings: readonly ChargeRing[];
  /** Hz */
  resonance: number;
  /** F and H of the mode's circuit */
  capacitance: number;
  inductance: number;
}

export interface PairCoupling {
  mutualInductance: number;
  mutualElastance: number;
  magnetic: number;
  capacitive: number;
}

/** A circle that carries the current of a stretch of winding. */
interface Filament {
  radius: number;
  height: number;
  /** A·turns at 1 V at the top */
  ampereTurns: number;
}

/** Five times as many change the mutual inductance by 3·10⁻³ at 1.5 winding lengths, by 7·10⁻⁴ at four. */
const FILAMENTS = 10;

function filamentsOf(coil: PairedCoil): Filament[] {
  const sections = coil.current.length;
  const count = Math.min(FILAMENTS, sections);
  const perSection = coil.turns / sections;
  return Array.from({ length: count }, (_, index) => {
    const from = Math.round((index * sections) / count);
    const to = Math.round(((index + 1) * sections) / count);
    const current = coil.current.slice(from, to).reduce((sum, value) => sum + value, 0);
    return {
      radius: coil.radius,
      height: coil.lowerEnd + (coil.windingLength * (from + to)) / (2 * sections),
      ampereTurns: current * perSection,
    };
  });
}

/** Σ MI₁I₂ at 1 V at both tops, H·A². */
function magneticEnergy(first: PairedCoil, second: PairedCoil, spacing: number, floor: boolean): number {
  const others = filamentsOf(second);
  let sum = 0;
  for (const a of filamentsOf(first)) {
    for (const b of others) {
      let mutual = parallelAxisMutualInductance(a.radius, b.radius, spacing, a.height - b.height);
      // the eddies of a conducting floor are the mirrored coil with its current reversed
      if (floor) mutual -= parallelAxisMutualInductance(a.radius, b.radius, spacing, a.height + b.height);
      sum += mutual * a.ampereTurns * b.ampereTurns;
    }
  }
  return sum;
}

/** Σ q₁φ₂ at 1 V at both tops, J; the ground plane by images. */
function electricEnergy(first: PairedCoil, second: PairedCoil, spacing: number): number {
  let sum = 0;
  for (const a of first.rings) {
    for (const b of second.rings) {
      const direct = parallelAxisInverseDistance(a.radius, b.radius, spacing, a.height - b.height);
      const image = parallelAxisInverseDistance(a.radius, b.radius, spacing, a.height + b.height);
      sum += a.charge * b.charge * (direct - image);
    }
  }
  return COULOMB_CONSTANT * sum;
}

/** Largest current of the mode's circuit at 1 V at the top, A: ωC. */
function circuitCurrent({ resonance, capacitance }: PairedCoil): number {
  return 2 * Math.PI * resonance * capacitance;
}

/**
 * @param spacing m, axis to axis, so large that no conductor of one coil reaches into the other
 * @param floorConducts whether the floor bears eddy currents, too; it bears charge in any case
 */
export function pairCoupling(
  first: PairedCoil,
  second: PairedCoil,
  spacing: number,
  floorConducts = false,
): PairCoupling {
  const mutualInductance =
    magneticEnergy(first, second, spacing, floorConducts) / (circuitCurrent(first) * circuitCurrent(second));
  const mutualElastance = electricEnergy(first, second, spacing) / (first.capacitance * second.capacitance);
  return {
    mutualInductance,
    mutualElastance,
    magnetic: couplingCoefficient(mutualInductance, first.inductance, second.inductance),
    capacitive: mutualElastance * Math.sqrt(first.capacitance * second.capacitance),
  };
}
