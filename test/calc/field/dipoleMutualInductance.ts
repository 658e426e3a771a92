import { MAGNETIC_CONSTANT } from "../../../src/calc/constants";

/**
 * Mutual inductance, H, of two small or far loops as magnetic dipoles:
 * μ₀·S₁·S₂·(2z² − x²)/(4π(x² + z²)^(5/2)).
 * Error of the order of (radius/distance)².
 *
 * Source: field of a magnetic dipole, Smythe, Static and Dynamic Electricity, 7.00.
 */
export function dipoleMutualInductance(
  radiusA: number,
  radiusB: number,
  axisOffset: number,
  distance: number,
): number {
  const areas = (Math.PI * radiusA * radiusB) ** 2;
  const x2 = axisOffset * axisOffset;
  const z2 = distance * distance;
  return (MAGNETIC_CONSTANT * areas * (2 * z2 - x2)) / (4 * Math.PI * (x2 + z2) ** 2.5);
}
