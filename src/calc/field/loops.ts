/**
 * Coaxial circular filaments: mutual inductance, self-inductance of a ring of round wire.
 *
 * | symbol | code name | meaning | unit |
 * | a, b | radiusA, radiusB | radii of the two rings | m |
 * | d | distance | axial distance of their planes | m |
 * | D | farthest | largest distance of two points, √((a+b)²+d²) | m |
 * | m, m₁ | – | parameter κ² = 4ab/D² and its complement ((a−b)²+d²)/D² | 1 |
 *
 * Convention: currents flow in the same sense; one turn each.
 */
import { MAGNETIC_CONSTANT } from "../constants";

/** Y of a ring whose current fills the wire evenly (direct current). */
export const UNIFORM_CURRENT = 0.25;

/** Y of a ring whose current flows on the wire's surface (skin depth ≪ wire). */
export const SURFACE_CURRENT = 0;

/**
 * Mutual inductance of two coaxial circles, H.
 *
 * Maxwell's M = μ₀√(ab)·[(2/κ − κ)K − (2/κ)E] = μ₀D·[(1 − m/2)K − E]. With the arithmetic–geometric
 * mean the bracket is K·Σ 2ⁿ⁻¹cₙ² from n = 1 on, and cₙ₊₁ = cₙ²/(4aₙ₊₁): nothing cancels, neither for
 * rings that are far apart or small (m → 0) nor for rings that almost touch (m₁ → 0).
 *
 * Valid for positive radii and rings that do not coincide; coinciding rings give Infinity.
 * Source: maxwell1873, art. 701; abramowitzStegun, 17.6.1–17.6.4.
 */
export function ringMutualInductance(radiusA: number, radiusB: number, distance: number): number {
  const sum = radiusA + radiusB;
  const difference = radiusA - radiusB;
  const squaredDistance = distance * distance;
  const farthestSquared = sum * sum + squaredDistance;
  const m = (4 * radiusA * radiusB) / farthestSquared;
  let b = Math.sqrt((difference * difference + squaredDistance) / farthestSquared);
  let a = 0.5 * (1 + b);
  let c = m / (2 * (1 + b));
  b = Math.sqrt(b);
  let weight = 1;
  let series = c * c;
  while (c > 1e-8 * a) {
    const mean = 0.5 * (a + b);
    b = Math.sqrt(a * b);
    c = (c * c) / (4 * mean);
    a = mean;
    weight *= 2;
    series += weight * c * c;
  }
  return ((MAGNETIC_CONSTANT * Math.sqrt(farthestSquared) * Math.PI) / (a + b)) * series;
}

/**
 * Self-inductance of one circular turn of round wire, H: μ₀R[ln(8R/ρ) − 2 + Y].
 *
 * @param radius m, to the wire's centre
 * @param conductorRadius m, bare wire
 * @param currentDistribution Y: {@link UNIFORM_CURRENT} ¼, {@link SURFACE_CURRENT} 0, or between them
 *
 * Error O((ρ/R)²·ln): below 10⁻⁵ for ρ/R < 1/300.
 * Source: rosaGrover1912, eqs. (63), (65).
 */
export function ringSelfInductance(
  radius: number,
  conductorRadius: number,
  currentDistribution: number = UNIFORM_CURRENT,
): number {
  return MAGNETIC_CONSTANT * radius * (Math.log((8 * radius) / conductorRadius) - 2 + currentDistribution);
}
