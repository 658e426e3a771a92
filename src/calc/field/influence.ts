/**
 * Potentials that ring charges on electrodes make at the nodes of electrodes: the matrix of the
 * axisymmetric boundary-element solve, by Nyström's method with the logarithm taken out.
 *
 * Where a point comes near a ring, K(m) = −(1/π)·K(1 − m)·ln m₁ + a smooth part.
 *
 * Source: kress1989, ch. 12; abramowitzStegun, 17.3.26; as in `ringPotential`, the potential of a ring.
 */
import type { Electrode } from "./electrode";
import { completeEllipticK } from "./elliptic";
import { COULOMB_CONSTANT, inverseMeanDistance } from "./ringPotential";

/** Where charges are mirrored with the opposite sign. */
export interface Mirrors {
  /** m, a conducting ceiling above the ground plane z = 0; null: the ground plane alone */
  ceilingHeight: number | null;
  /** how many of its images are summed one by one, for checks of convergence */
  ceilingImages?: number;
}

/** Images beyond the ground plane's own that are summed one by one on each side; the rest by its limit. */
const CEILING_IMAGES = 3;

/** Apéry's constant, Σ 1/k³. */
const SUM_OF_INVERSE_CUBES = 1.202056903159594;

/**
 * What the images of ceiling and ground plane beyond a number of pairs add: with both charge and point
 * low against their distance 2kH, the four images of order k make −z·z′/(kH)³, as on the axis.
 */
function farImages(height: number, ringHeight: number, ceilingHeight: number, summed: number): number {
  let rest = SUM_OF_INVERSE_CUBES;
  for (let k = 1; k <= summed; k++) rest -= 1 / (k * k * k);
  return (-height * ringHeight * rest) / ceilingHeight ** 3;
}

/** Sum of the images' inverse mean distances of a ring, for a unit charge above the plane. */
function imagePart(
  radius: number,
  height: number,
  ringRadius: number,
  ringHeight: number,
  { ceilingHeight, ceilingImages = CEILING_IMAGES }: Mirrors,
): number {
  let sum = -inverseMeanDistance(radius, height, ringRadius, -ringHeight);
  if (ceilingHeight === null) return sum;
  for (let k = 1; k <= ceilingImages; k++) {
    const shift = 2 * k * ceilingHeight;
    sum += inverseMeanDistance(radius, height, ringRadius, ringHeight + shift);
    sum += inverseMeanDistance(radius, height, ringRadius, ringHeight - shift);
    sum -= inverseMeanDistance(radius, height, ringRadius, -ringHeight + shift);
    sum -= inverseMeanDistance(radius, height, ringRadius, -ringHeight - shift);
  }
  return sum + farImages(height, ringHeight, ceilingHeight, ceilingImages);
}

/** The argument of the logarithm that is integrated exactly: it vanishes as the square of the distance. */
function logarithmArgument(electrode: Electrode, i: number, j: number): number {
  const { step } = electrode;
  if (electrode.closed) return 4 * Math.sin(0.5 * (i - j) * step) ** 2;
  return (Math.cos((i + 0.5) * step) - Math.cos((j + 0.5) * step)) ** 2;
}

/** Inverse mean distance of a node from the strip of its own electrode, the logarithm integrated exactly. */
function ownPart(electrode: Electrode, i: number, j: number): number {
  const { radius, height, speed, logarithm, step, closed } = electrode;
  const axial = height[i] - height[j];
  const farthest = Math.hypot(radius[i] + radius[j], axial);
  const nearestSquared = (radius[i] - radius[j]) ** 2 + axial * axial;
  const m1 = nearestSquared / (farthest * farthest);
  const slope = (-2 * completeEllipticK(1 - m1)) / (Math.PI * Math.PI * farthest);
  const weight = closed ? logarithm[Math.abs(i - j)] : logarithm[i * radius.length + j];
  const smooth =
    i === j
      ? (2 * Math.log((4 * farthest) / speed[j])) / (Math.PI * farthest)
      : inverseMeanDistance(radius[i], height[i], radius[j], height[j]) -
        slope * Math.log(logarithmArgument(electrode, i, j));
  return (slope * weight) / step + smooth;
}

/** The block of an electrode with itself, which is symmetric: half of it computed. */
function fillOwnInfluence(
  electrode: Electrode,
  mirrors: Mirrors | null,
  matrix: Float64Array,
  stride: number,
  row: number,
  column: number,
): void {
  const { radius, height } = electrode;
  for (let i = 0; i < radius.length; i++) {
    for (let j = 0; j <= i; j++) {
      let value = ownPart(electrode, i, j);
      if (mirrors) value += imagePart(radius[i], height[i], radius[j], height[j], mirrors);
      matrix[(row + i) * stride + column + j] = COULOMB_CONSTANT * value;
      matrix[(row + j) * stride + column + i] = COULOMB_CONSTANT * value;
    }
  }
}

/**
 * A node's strip meets itself at about 0.18 of its width. A strip of another electrode that lies nearer
 * than that would be bound more tightly than to itself, and the energy of opposite charges on the two
 * negative; where parts all but touch, strips count as this part of their width apart.
 */
const NEAREST_STRIPS = 0.25;

/** Inverse mean distance of strips of two electrodes. */
function mutualPart(at: Electrode, from: Electrode, i: number, j: number): number {
  const radial = at.radius[i] - from.radius[j];
  const axial = at.height[i] - from.height[j];
  const nearest = NEAREST_STRIPS * Math.max(at.share[i], from.share[j]);
  const apart = Math.sqrt(Math.max(axial * axial, nearest * nearest - radial * radial));
  return inverseMeanDistance(at.radius[i], apart, from.radius[j], 0);
}

/**
 * Fills a block of a matrix with the potential, V, at each node of `at` per charge, C, of each node of
 * `from`.
 * @param mirrors null: free space
 * @param matrix row by row, `stride` columns; the block begins at (row, column)
 */
export function fillInfluence(
  at: Electrode,
  from: Electrode,
  mirrors: Mirrors | null,
  matrix: Float64Array,
  stride: number,
  row: number,
  column: number,
): void {
  if (at === from) {
    fillOwnInfluence(at, mirrors, matrix, stride, row, column);
    return;
  }
  for (let i = 0; i < at.radius.length; i++) {
    for (let j = 0; j < from.radius.length; j++) {
      let value = mutualPart(at, from, i, j);
      if (mirrors) value += imagePart(at.radius[i], at.height[i], from.radius[j], from.height[j], mirrors);
      matrix[(row + i) * stride + column + j] = COULOMB_CONSTANT * value;
    }
  }
}
