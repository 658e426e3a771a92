/** Coupling of primary and secondary from their inductances per section. */

/** Σ MₛIₛ, H times the unit of the current: mutual inductance for a current profile over equal sections. */
export function profileMutual(mutuals: ArrayLike<number>, profile: ArrayLike<number>): number {
  let sum = 0;
  for (let s = 0; s < mutuals.length; s++) sum += mutuals[s] * profile[s];
  return sum;
}

/** IᵀLI for a current profile over equal sections and their inductance matrix (row by row). */
export function profileInductance(matrix: ArrayLike<number>, profile: ArrayLike<number>): number {
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
