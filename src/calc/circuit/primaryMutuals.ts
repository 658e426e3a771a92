/** Mutual inductances of primary and secondary at a tap, and the coupling coefficients that follow. */
import { couplingCoefficient, profileMutual } from "../coil/coupling";
import { mutualAtTap, type SectionMutuals } from "../coil/sectionMutuals";
import type { PrimaryCircuit } from "./primaryCircuit";
import type { SecondaryCircuit } from "./secondaryCircuit";

export interface MutualsAtTap {
  /** H, uniform secondary current */
  uniform: number;
  /** H, of each mode normalised to the top */
  modes: number[];
}

/** Mutual inductances at a tap, turns; null if the tap is not on the conductor. */
export function mutualsAtTap(
  table: SectionMutuals,
  { modes }: Pick<SecondaryCircuit, "modes">,
  tap: number,
): MutualsAtTap | null {
  const sections = mutualAtTap(table, tap);
  if (!sections) return null;
  return {
    uniform: sections.reduce((sum, value) => sum + value, 0),
    // normalised: the mode's circuit current is ωC at 1 V, so its mutual is ΣMI over that
    modes: modes.map(
      ({ current, resonance, capacitance }) =>
        profileMutual(sections, current) / (2 * Math.PI * resonance * capacitance),
    ),
  };
}

/** Coupling coefficients M/√(L₁L₂). */
export interface Couplings {
  /** with a uniform current in the secondary, as measured at low frequency */
  uniformCurrent: number;
  /** with the fundamental's current, the primary without its leads */
  atResonance: number;
  /** of the whole primary circuit, leads included */
  circuit: number;
}

/**
 * Coupling coefficients at a tap.
 * Source: definition, k = M/√(L₁L₂), with a mode's current ΣMᵢIᵢ/√(L₁·IᵀLI).
 */
export function couplings(
  { uniform, modes: [fundamental] }: MutualsAtTap,
  { atTap, inductance }: Pick<PrimaryCircuit, "atTap" | "inductance">,
  secondary: Pick<SecondaryCircuit, "modes" | "inductance">,
): Couplings {
  const atResonance = couplingCoefficient(fundamental, atTap.inductance, secondary.modes[0].inductance);
  return {
    uniformCurrent: couplingCoefficient(uniform, atTap.inductance, secondary.inductance),
    atResonance,
    circuit: atResonance * Math.sqrt(atTap.inductance / inductance),
  };
}
