/** Mutual inductance of two circles whose axes are parallel but apart (two coils side by side). */
import { ringMutualInductance } from "./loops";

const FEWEST_POINTS = 32;
const MOST_POINTS = 8192;

/**
 * Mutual inductance, H: Neumann's double integral, the inner one done in closed form as the vector
 * potential of the first loop, the outer one by the trapezoidal rule, which converges exponentially on
 * a closed line. Points are doubled until two results agree to 10⁻¹² of the loops' scale; wires nearer
 * than about 1/1000 of the radius do not reach it within the 8192 points allowed.
 *
 * @param axisOffset m, distance of the two axes
 * @param distance m, distance of the two planes
 *
 * Source: grover1946, ch. 20 (parallel axes).
 */
export function parallelAxisMutualInductance(
  radiusA: number,
  radiusB: number,
  axisOffset: number,
  distance: number,
): number {
  let previous = lineIntegral(radiusA, radiusB, axisOffset, distance, FEWEST_POINTS);
  for (let points = 2 * FEWEST_POINTS; points <= MOST_POINTS; points *= 2) {
    const next = lineIntegral(radiusA, radiusB, axisOffset, distance, points);
    if (Math.abs(next - previous) <= 1e-12 * Math.abs(next)) return next;
    previous = next;
  }
  return previous;
}

/** ∮A·dl round loop B; by symmetry over half of it. */
function lineIntegral(a: number, b: number, offset: number, distance: number, points: number): number {
  let sum = 0;
  for (let i = 0; i < points; i++) {
    const angle = (Math.PI * (i + 0.5)) / points;
    const x = offset + b * Math.cos(angle);
    const y = b * Math.sin(angle);
    const radius = Math.hypot(x, y);
    const along = (x * Math.cos(angle) + y * Math.sin(angle)) / radius;
    if (radius > 0) sum += (along * ringMutualInductance(a, radius, distance)) / (2 * Math.PI * radius);
  }
  return (2 * Math.PI * b * sum) / points;
}
