/** Coupling of two inductances, and of primary and secondary from their inductances per section. */

/** Σ MₛIₛ, H times the unit of the current: mutual inductance for a current profile over equal sections. */
export function profileMutual(mutuals: ArrayLike<number>, profile: ArrayLike<number>): number {
  let sum = 0;
  for (let s = 0; s < mutuals.length; s++) sum += mutuals[s] * profile[s];
  return sum;
}

/**
 * k = M/√(L₁L₂), all in H; with a mode's current, its mutual inductance and its effective one.
 * Source: definition.
 */
export function couplingCoefficient(mutual: number, first: number, second: number): number {
  return mutual / Math.sqrt(first * second);
}
