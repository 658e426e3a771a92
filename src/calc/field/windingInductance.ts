/**
 * A single-layer winding as N equal round turns at constant pitch: its self-inductance and the
 * inductance matrix of its sections, exactly, by counting turn pairs.
 *
 * With equal radii the mutual inductance of two turns depends on their separation alone. Let L(n) be
 * the self-inductance of n neighbouring turns. The flux that the first j turns send through the first
 * i is then ½[L(i) + L(j) − L(|i−j|)], so the one table L(0…N), O(N) elliptic integrals, gives every
 * block of turns as a second difference. A section that cuts a turn takes that fraction of it.
 */
import { ringMutualInductance, ringSelfInductance, UNIFORM_CURRENT } from "./loops";

export interface RoundWireWinding {
  /** need not be whole */
  turns: number;
  /** m, centre to centre */
  pitch: number;
  /** m, axis to the wire's centre */
  radius: number;
  /** m, bare wire */
  conductorRadius: number;
}

export interface WindingInductanceOptions {
  /** Y of the turns' self term, ¼ for uniform current (default), 0 for surface current */
  currentDistribution?: number;
  /** m, the winding's lower end above a perfectly conducting floor; absent: no floor in the magnetic field */
  heightAboveConductingFloor?: number;
}

/**
 * Inductance matrix, H, of equal sections (the same fraction of the turns each), row by row from the
 * lower end: `sections`² values. The sum of all entries is the winding's inductance: the sum over all turn pairs.
 * NaN if a size is not positive; valid for thin wire (conductorRadius ≪ radius).
 *
 * Source: as in `loops`, the formulas of a ring; rosaGrover1912, p. 122, the summation.
 *
 * For a number of turns that is not whole, the two neighbouring whole numbers are taken, stretched to
 * the same length and ampere-turns, and blended: the result is continuous in `turns`.
 */
export function sectionInductanceMatrix(
  winding: RoundWireWinding,
  sections: number,
  options: WindingInductanceOptions = {},
): Float64Array {
  const matrix = new Float64Array(sections * sections);
  const { turns } = winding;
  if (!(turns > 0)) return matrix.fill(Number.NaN);
  const below = Math.floor(turns);
  const part = turns - below;
  if (below === 0 || part > 0)
    addStretched(matrix, winding, below + 1, sections, below === 0 ? 1 : part, options);
  if (below > 0) addStretched(matrix, winding, below, sections, 1 - part, options);
  return matrix;
}

/** Adds `share` × the matrix of `count` whole turns with the winding's length and ampere-turns. */
function addStretched(
  matrix: Float64Array,
  winding: RoundWireWinding,
  count: number,
  sections: number,
  share: number,
  options: WindingInductanceOptions,
): void {
  const weight = winding.turns / count;
  const stretched = { ...winding, turns: count, pitch: winding.pitch * weight };
  const scale = share * weight * weight;
  addBlocks(matrix, pairSums(stretched, options.currentDistribution), sections, count, scale);
  const height = options.heightAboveConductingFloor;
  if (height !== undefined) addImageBlocks(matrix, imageSums(stretched, height), sections, count, -scale);
}

/** L(0…N): self-inductance of the first n turns. */
function pairSums(winding: RoundWireWinding, currentDistribution = UNIFORM_CURRENT): Float64Array {
  const { turns, pitch, radius, conductorRadius } = winding;
  const sums = new Float64Array(turns + 1);
  let row = ringSelfInductance(radius, conductorRadius, currentDistribution);
  for (let n = 1; n <= turns; n++) {
    sums[n] = sums[n - 1] + row;
    row += 2 * ringMutualInductance(radius, radius, n * pitch);
  }
  return sums;
}

/**
 * S(0…2N) with second difference H(n), the mutual inductance of a turn and the floor's image of
 * another whose numbers add up to n. The first i turns and the images of the first j then share
 * S(i+j) − S(i) − S(j).
 */
function imageSums(winding: RoundWireWinding, height: number): Float64Array {
  const { turns, pitch, radius } = winding;
  const sums = new Float64Array(2 * turns + 1);
  let slope = 0;
  for (let n = 2; n <= 2 * turns; n++) {
    slope += ringMutualInductance(radius, radius, 2 * height + (n - 1) * pitch);
    sums[n] = sums[n - 1] + slope;
  }
  return sums;
}

function at(table: Float64Array, index: number): number {
  return table[Math.abs(index)];
}

type CornerSum = (table: Float64Array, i: number, j: number) => number;

const ownCorner: CornerSum = (table, i, j) => 0.5 * (at(table, i) + at(table, j) - at(table, i - j));
const imageCorner: CornerSum = (table, i, j) => at(table, i + j) - at(table, i) - at(table, j);

function addBlocks(
  matrix: Float64Array,
  table: Float64Array,
  sections: number,
  turns: number,
  scale: number,
) {
  addDifferences(matrix, cornerTable(table, sections, turns, ownCorner), sections, scale);
}

function addImageBlocks(
  matrix: Float64Array,
  table: Float64Array,
  sections: number,
  turns: number,
  scale: number,
) {
  addDifferences(matrix, cornerTable(table, sections, turns, imageCorner), sections, scale);
}

/** Flux that all turns before one section boundary send through all turns before another. */
function cornerTable(table: Float64Array, sections: number, turns: number, corner: CornerSum): Float64Array {
  const size = sections + 1;
  const corners = new Float64Array(size * size);
  for (let s = 0; s < size; s++) {
    for (let t = 0; t <= s; t++) {
      const value = cornerBetweenTurns(table, (s * turns) / sections, (t * turns) / sections, turns, corner);
      corners[s * size + t] = value;
      corners[t * size + s] = value;
    }
  }
  return corners;
}

/** Bilinear between whole turns, because a cut turn counts by its fraction. */
function cornerBetweenTurns(
  table: Float64Array,
  x: number,
  y: number,
  turns: number,
  corner: CornerSum,
): number {
  const i = Math.min(Math.floor(x), turns - 1);
  const j = Math.min(Math.floor(y), turns - 1);
  const u = x - i;
  const v = y - j;
  const lower = (1 - u) * corner(table, i, j) + u * corner(table, i + 1, j);
  const upper = (1 - u) * corner(table, i, j + 1) + u * corner(table, i + 1, j + 1);
  return (1 - v) * lower + v * upper;
}

function addDifferences(matrix: Float64Array, corners: Float64Array, sections: number, scale: number): void {
  const size = sections + 1;
  for (let s = 0; s < sections; s++) {
    for (let t = 0; t < sections; t++) {
      const c = s * size + t;
      const lower = corners[c + 1] - corners[c];
      const upper = corners[c + size + 1] - corners[c + size];
      matrix[s * sections + t] = matrix[s * sections + t] + scale * (upper - lower);
    }
  }
}
