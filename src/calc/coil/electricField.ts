/**
 * The electric field of a coil: charges on all conductors from the winding's charge functions and the
 * top load's total charge, and the elastances that the modes are found from.
 *
 * | symbol | code name | meaning | unit |
 * | λ | – | winding charge per unit of the parameter t, z = mid − ½·length·cos t | C |
 * | a_n | charge functions | λ = Σ aₙ cos(nt), n = 0 … N − 1 | C |
 * | Q | top charge | total charge of the top load | C |
 * | P | elastance | energy is ½·xᵀPx with x = (a₀ … a_N−1, Q) | 1/F |
 *
 * Everything but winding and top load is at 0 V.
 * Source: harrington1968, ch. 2; maxwell1873, art. 86–87 (elimination of conductors at given potential).
 */

import { type Electrode, nodeCount } from "../field/electrode";
import { fillInfluence, type Mirrors } from "../field/influence";
import { influenceMatrix, totalNodes } from "../field/influenceMatrix";
import { choleskyFactor } from "../linear/cholesky";
import { factorise, substitute } from "../linear/elimination";
import type { CoilMesh } from "./mesh";

/** The elastance matrix of winding functions and top charge. */
export interface Elastance {
  /** N, or N + 1 with a top load */
  size: number;
  /** 1/F, row by row */
  matrix: Float64Array;
  /** C of CCᵀ = matrix, in its lower triangle */
  factor: Float64Array;
}

export interface LoadedField {
  elastance: Elastance;
  /** charge, C, of each node of grounded and top load electrodes, in that order, per unit of (a, Q) */
  nodeCharges: Float64Array;
}

export interface ElectricField {
  /** N */
  functions: number;
  mesh: CoilMesh;
  bare: Elastance;
  /** null if there is no top load */
  loaded: LoadedField | null;
}

/** Charges of the winding's nodes for each function: nodes × N. */
function functionCharges(winding: Electrode, functions: number): Float64Array {
  const nodes = nodeCount(winding);
  const charges = new Float64Array(nodes * functions);
  for (let i = 0; i < nodes; i++) {
    for (let n = 0; n < functions; n++) {
      charges[i * functions + n] = winding.step * Math.cos(n * (i + 0.5) * winding.step);
    }
  }
  return charges;
}

/** rows × inner times inner × columns. */
function product(
  a: Float64Array,
  b: Float64Array,
  rows: number,
  inner: number,
  columns: number,
): Float64Array {
  const result = new Float64Array(rows * columns);
  for (let i = 0; i < rows; i++) {
    for (let k = 0; k < inner; k++) {
      const factor = a[i * inner + k];
      for (let j = 0; j < columns; j++) result[i * columns + j] += factor * b[k * columns + j];
    }
  }
  return result;
}

/** Potentials at conductor nodes of the winding's functions: conductor nodes × N. */
function windingInfluence(
  mesh: CoilMesh,
  electrodes: readonly Electrode[],
  mirrors: Mirrors,
  charges: Float64Array,
  functions: number,
): Float64Array {
  const rows = totalNodes(electrodes);
  const nodes = nodeCount(mesh.winding);
  const influence = new Float64Array(rows * nodes);
  let row = 0;
  for (const at of electrodes) {
    fillInfluence(at, mesh.winding, mirrors, influence, nodes, row, 0);
    row += nodeCount(at);
  }
  return product(influence, charges, rows, nodes, functions);
}

/** Potentials at the winding's nodes of its own functions with nothing else there: nodes × N. */
function ownPotentials(
  winding: Electrode,
  mirrors: Mirrors,
  charges: Float64Array,
  functions: number,
): Float64Array {
  const nodes = nodeCount(winding);
  return product(influenceMatrix([winding], mirrors), charges, nodes, nodes, functions);
}

/** Projection of potentials on the functions, made symmetric to the last digit: N × N. */
function projected(
  charges: Float64Array,
  potentials: Float64Array,
  nodes: number,
  functions: number,
): Float64Array {
  const matrix = new Float64Array(functions * functions);
  for (let n = 0; n < functions; n++) {
    for (let m = 0; m < functions; m++) {
      let sum = 0;
      for (let i = 0; i < nodes; i++) {
        sum +=
          charges[i * functions + n] * potentials[i * functions + m] +
          charges[i * functions + m] * potentials[i * functions + n];
      }
      matrix[n * functions + m] = 0.5 * sum;
    }
  }
  return matrix;
}

/** What conductors at 0 V take off the winding's own elastance: BᵀG⁻¹B. */
function screening(
  influence: Float64Array,
  charges: Float64Array,
  size: number,
  functions: number,
  columns: number,
  column: number,
): number[] {
  const row = new Array<number>(columns).fill(0);
  for (let i = 0; i < size; i++) {
    for (let m = 0; m < columns; m++) row[m] += influence[i * functions + column] * charges[i * columns + m];
  }
  return row;
}

/** Null if the energy is not positive: the nodes do not resolve the geometry. */
function elastanceOf(matrix: Float64Array, size: number): Elastance | null {
  const factor = choleskyFactor(matrix.slice(), size);
  return factor && { size, matrix, factor };
}

interface Eliminated {
  /** leading conductor nodes that take part */
  size: number;
  /** G⁻¹[B | 1 on the top load]: size × (N + 1) */
  charges: Float64Array;
}

function eliminate(
  factors: Float64Array,
  stride: number,
  size: number,
  grounded: number,
  influence: Float64Array,
  functions: number,
): Eliminated {
  const columns = functions + 1;
  const charges = new Float64Array(size * columns);
  for (let i = 0; i < size; i++) {
    for (let n = 0; n < functions; n++) charges[i * columns + n] = influence[i * functions + n];
    charges[i * columns + functions] = i < grounded ? 0 : 1;
  }
  substitute(factors, stride, size, charges, columns);
  return { size, charges };
}

function screenedElastance(
  own: Float64Array,
  influence: Float64Array,
  { size, charges }: Eliminated,
  functions: number,
): Float64Array {
  const matrix = own.slice();
  for (let n = 0; n < functions; n++) {
    const row = screening(influence, charges, size, functions, functions + 1, n);
    for (let m = 0; m < functions; m++) matrix[n * functions + m] -= row[m];
  }
  return matrix;
}

/** Charge on the top load per winding function while it is held at 0 V (b, with its sign), and per volt (s). */
function topCharges(
  { size, charges }: Eliminated,
  grounded: number,
  functions: number,
): { induced: Float64Array; perVolt: number } {
  const columns = functions + 1;
  const sums = new Float64Array(columns);
  for (let i = grounded; i < size; i++) for (let c = 0; c < columns; c++) sums[c] += charges[i * columns + c];
  return { induced: sums.subarray(0, functions), perVolt: sums[functions] };
}

/** The top load floats at the potential that its total charge asks for. */
function floatingElastance(
  screened: Float64Array,
  induced: Float64Array,
  perVolt: number,
  functions: number,
): Elastance | null {
  const size = functions + 1;
  const matrix = new Float64Array(size * size);
  for (let n = 0; n < functions; n++) {
    for (let m = 0; m < functions; m++)
      matrix[n * size + m] = screened[n * functions + m] + (induced[n] * induced[m]) / perVolt;
    matrix[n * size + functions] = induced[n] / perVolt;
    matrix[functions * size + n] = induced[n] / perVolt;
  }
  matrix[functions * size + functions] = 1 / perVolt;
  return elastanceOf(matrix, size);
}

/** Node charges per unit of (a, Q): the top load's potential times its own, less what the winding induces. */
function chargesOf(
  { size, charges }: Eliminated,
  induced: Float64Array,
  perVolt: number,
  functions: number,
): Float64Array {
  const columns = functions + 1;
  const result = new Float64Array(size * columns);
  for (let i = 0; i < size; i++) {
    const own = charges[i * columns + functions] / perVolt;
    for (let n = 0; n < functions; n++) result[i * columns + n] = own * induced[n] - charges[i * columns + n];
    result[i * columns + functions] = own;
  }
  return result;
}

function loadedField(
  own: Float64Array,
  influence: Float64Array,
  all: Eliminated,
  grounded: number,
  functions: number,
): LoadedField | null {
  const { induced, perVolt } = topCharges(all, grounded, functions);
  const screened = screenedElastance(own, influence, all, functions);
  const elastance = floatingElastance(screened, induced, perVolt, functions);
  return elastance && { elastance, nodeCharges: chargesOf(all, induced, perVolt, functions) };
}

/**
 * Solves the field of a coil whose conductors do not cross.
 * @returns null if the conductors are so close that the elimination fails or an energy is not positive
 */
export function solveElectricField(
  mesh: CoilMesh,
  mirrors: Mirrors,
  functions = mesh.chargeFunctions,
): ElectricField | null {
  const electrodes = [...mesh.grounded, ...mesh.topLoad];
  const size = totalNodes(electrodes);
  const grounded = totalNodes(mesh.grounded);
  const charges = functionCharges(mesh.winding, functions);
  const own = ownPotentials(mesh.winding, mirrors, charges, functions);
  const ownElastance = projected(charges, own, nodeCount(mesh.winding), functions);
  const influence = windingInfluence(mesh, electrodes, mirrors, charges, functions);
  const factors = influenceMatrix(electrodes, mirrors);
  if (!factorise(factors, size)) return null;
  const eliminated = (leading: number): Eliminated =>
    eliminate(factors, size, leading, grounded, influence, functions);
  const screened = screenedElastance(ownElastance, influence, eliminated(grounded), functions);
  const bare = elastanceOf(screened, functions);
  if (!bare) return null;
  if (size === grounded) return { functions, mesh, bare, loaded: null };
  const loaded = loadedField(ownElastance, influence, eliminated(size), grounded, functions);
  return loaded && { functions, mesh, bare, loaded };
}
