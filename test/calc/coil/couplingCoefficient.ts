import { profileMutual } from "../../../src/calc/coil/coupling";

/** IᵀLI for a current profile over equal sections and their inductance matrix (row by row). */
function profileInductance(matrix: ArrayLike<number>, profile: ArrayLike<number>): number {
  const sections = profile.length;
  let sum = 0;
  for (let at = 0; at < sections * sections; at++) {
    sum += matrix[at] * profile[Math.floor(at / sections)] * profile[at % sections];
  }
  return sum;
}

/**
 * Coupling coefficient k = ΣMₛIₛ/√(Lp·IᵀLI); the profile of the fundamental gives k at resonance, a
 * profile of ones k for uniform current. With leads in `primaryInductance` it is k of the circuit.
 *
 * Source: definition, Terman, Radio Engineers' Handbook (1943), sec. 3, generalised by energy.
 */
export function couplingCoefficient(
  mutuals: ArrayLike<number>,
  matrix: ArrayLike<number>,
  profile: ArrayLike<number>,
  primaryInductance: number,
): number {
  return profileMutual(mutuals, profile) / Math.sqrt(primaryInductance * profileInductance(matrix, profile));
}
