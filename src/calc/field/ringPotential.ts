import { ELECTRIC_CONSTANT } from "../constants";

/** V·m/C: potential of a point charge times its distance. */
export const COULOMB_CONSTANT = 1 / (4 * Math.PI * ELECTRIC_CONSTANT);

/**
 * One over the arithmetic–geometric mean of the farthest and the nearest distance of a point from a
 * ring, 1/m. A ring of charge Q makes the potential Q·K(m)/(2π²ε₀D) there, and K(m)/D is π/2 over this
 * mean, so that Q/(4πε₀) times this value is the potential.
 *
 * Valid off the ring; Infinity on it.
 * Source: smythe1950, ring of charge; abramowitzStegun, 17.6.3.
 */
export function inverseMeanDistance(
  radius: number,
  height: number,
  ringRadius: number,
  ringHeight: number,
): number {
  const axial = height - ringHeight;
  const sum = radius + ringRadius;
  const difference = radius - ringRadius;
  let a = Math.sqrt(sum * sum + axial * axial);
  let b = Math.sqrt(difference * difference + axial * axial);
  while (a - b > 1e-8 * a) {
    const mean = 0.5 * (a + b);
    b = Math.sqrt(a * b);
    a = mean;
  }
  return 2 / (a + b);
}
