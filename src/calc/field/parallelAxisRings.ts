/** Potentials of charged rings on parallel axes (two coils side by side). */
import { inverseMeanDistance } from "./ringPotential";

const FEWEST_POINTS = 8;
const MOST_POINTS = 512;
/** The rule's error falls as this part of the distance, to the power of twice the points. */
const ACCURACY = 1e-9;

/** So that (b/nearest)^(2n) is below the accuracy. */
function pointsFor(radiusA: number, radiusB: number, axisOffset: number, distance: number): number {
  const nearest = Math.hypot(Math.max(axisOffset - radiusA, 0), distance);
  const ratio = radiusB / Math.max(nearest, radiusB * 1.01);
  const wanted = ratio > 0 ? Math.log(ACCURACY) / (2 * Math.log(ratio)) : 0;
  return Math.min(MOST_POINTS, Math.max(FEWEST_POINTS, Math.ceil(wanted)));
}

/**
 * Mean over ring B of the inverse mean distance from ring A, 1/m: times Q/(4πε₀) the mean potential on B
 * of a charge Q spread evenly on A, the same where A and B are exchanged. By symmetry over half of B, by
 * the trapezoidal rule, which converges exponentially on a closed line.
 *
 * @param axisOffset m, distance of the two axes, above the sum of the radii where the planes coincide
 * @param distance m, distance of the two planes
 *
 * Source: as in `ringPotential`, averaged; trefethenWeideman2014, theorem 2.1 (convergence).
 */
export function parallelAxisInverseDistance(
  radiusA: number,
  radiusB: number,
  axisOffset: number,
  distance: number,
): number {
  const points = pointsFor(radiusA, radiusB, axisOffset, distance);
  let sum = 0;
  for (let i = 0; i < points; i++) {
    const angle = (Math.PI * (i + 0.5)) / points;
    const radius = Math.hypot(axisOffset + radiusB * Math.cos(angle), radiusB * Math.sin(angle));
    sum += inverseMeanDistance(radius, distance, radiusA, 0);
  }
  return sum / points;
}
