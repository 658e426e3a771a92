/**
 * The secondary as a distributed resonator: fundamental and overtones from the energies of charge and
 * current.
 *
 * The charge functions of `electricField` carry a current I(t) = iω·(Q + ∫ₜ^π λ) through the winding, so
 * that ½xᵀPx and ½ω²·xᵀSᵀLSx are the two energies and P x = ω² SᵀLS x holds the modes.
 *
 * Source: courantHilbert, ch. IV (Ritz method); grover1946 (S and L); as in `windingInductance`, the inductances
 * of sections.
 */
import { EigenvalueDecomposition, Matrix } from "ml-matrix";
import type { Elastance } from "./electricField";

export interface SecondaryMode {
  /** Hz */
  resonance: number;
  /** amplitude of the charge functions (and the top charge) that makes 1 V at the top, C */
  charges: number[];
  /** A of each section, from the lower end, at 1 V at the top */
  current: number[];
  /** V at the lower end and the upper end of each section: one more than sections; the last is 1 */
  voltage: number[];
  /** F, twice the energy over the square of the top voltage */
  effectiveCapacitance: number;
}

/** ∫ sin(nt)·sin t dt. */
function sineIntegral(n: number, t: number): number {
  if (n === 1) return 0.5 * t - 0.25 * Math.sin(2 * t);
  return Math.sin((n - 1) * t) / (2 * (n - 1)) - Math.sin((n + 1) * t) / (2 * (n + 1));
}

/** ∫ F dz/(½·length) with F(t) = ∫ₜ^π cos(ns) ds, the charge above a height. */
function chargeAboveIntegral(n: number, t: number): number {
  if (n === 0) return -(Math.PI - t) * Math.cos(t) - Math.sin(t);
  return -sineIntegral(n, t) / n;
}

/** Mean charge above each section's heights, per unit of (a, Q): sections × size. */
function currentShapes(sections: number, functions: number, size: number): Float64Array {
  const shapes = new Float64Array(sections * size);
  const parameter = (s: number): number => Math.acos(1 - (2 * s) / sections);
  for (let s = 0; s < sections; s++) {
    const [lower, upper] = [parameter(s), parameter(s + 1)];
    for (let n = 0; n < functions; n++) {
      const area = chargeAboveIntegral(n, upper) - chargeAboveIntegral(n, lower);
      shapes[s * size + n] = 0.5 * sections * area;
    }
    if (size > functions) shapes[s * size + functions] = 1;
  }
  return shapes;
}

/** L·S: flux of each section per unit of the shapes, sections × size. */
function sectionFluxes(
  inductance: Float64Array,
  shapes: Float64Array,
  sections: number,
  size: number,
): Float64Array {
  const fluxes = new Float64Array(sections * size);
  for (let s = 0; s < sections; s++) {
    for (let t = 0; t < sections; t++) {
      const mutual = inductance[s * sections + t];
      for (let n = 0; n < size; n++) fluxes[s * size + n] += mutual * shapes[t * size + n];
    }
  }
  return fluxes;
}

function magneticMatrix(shapes: Float64Array, fluxes: Float64Array, sections: number, size: number): Matrix {
  const matrix = Matrix.zeros(size, size);
  for (let n = 0; n < size; n++) {
    for (let m = 0; m <= n; m++) {
      let sum = 0;
      for (let s = 0; s < sections; s++)
        sum += shapes[s * size + n] * fluxes[s * size + m] + shapes[s * size + m] * fluxes[s * size + n];
      matrix.set(n, m, 0.5 * sum);
      matrix.set(m, n, 0.5 * sum);
    }
  }
  return matrix;
}

function forward(lower: Float64Array, size: number, side: number[]): number[] {
  const result: number[] = [];
  for (let i = 0; i < size; i++) {
    let sum = side[i];
    for (let k = 0; k < i; k++) sum -= lower[i * size + k] * result[k];
    result.push(sum / lower[i * size + i]);
  }
  return result;
}

function backward(lower: Float64Array, size: number, side: number[]): number[] {
  const result = [...side];
  for (let i = size - 1; i >= 0; i--) {
    for (let k = i + 1; k < size; k++) result[i] -= lower[k * size + i] * result[k];
    result[i] /= lower[i * size + i];
  }
  return result;
}

/** C⁻¹TC⁻ᵀ, whose eigenvalues are 1/ω². */
function reduced(lower: Float64Array, magnetic: Matrix, size: number): Matrix {
  const half = new Matrix(magnetic.to2DArray().map((row) => forward(lower, size, row))).transpose();
  const rows = half.to2DArray().map((row) => forward(lower, size, row));
  const full = new Matrix(rows);
  return full.clone().add(full.transpose()).mul(0.5);
}

function scaledMode(
  charges: number[],
  omega: number,
  shapes: Float64Array,
  fluxes: Float64Array,
  elastance: Elastance,
  sections: number,
): SecondaryMode {
  const { size, matrix } = elastance;
  const along = (table: Float64Array, s: number): number =>
    charges.reduce((sum, value, n) => sum + table[s * size + n] * value, 0);
  const voltage = [0];
  for (let s = 0; s < sections; s++) voltage.push(voltage[s] + omega * omega * along(fluxes, s));
  const top = voltage[sections];
  const scaled = charges.map((value) => value / top);
  let twiceEnergy = 0;
  for (let n = 0; n < size; n++)
    for (let m = 0; m < size; m++) twiceEnergy += scaled[n] * matrix[n * size + m] * scaled[m];
  return {
    resonance: omega / (2 * Math.PI),
    charges: scaled,
    current: Array.from({ length: sections }, (_, s) => (omega * along(shapes, s)) / top),
    voltage: voltage.map((value) => value / top + 0), // + 0: no −0 at the base
    effectiveCapacitance: twiceEnergy,
  };
}

/**
 * Current at a height on the winding, A, at 1 V at the top.
 * @param functions number of charge functions, the top charge not counted
 * @param part of the winding's length, 0 at the lower end, 1 at the upper
 */
export function modeCurrent(mode: SecondaryMode, functions: number, part: number): number {
  const t = Math.acos(1 - 2 * part);
  const above = (n: number): number => (n === 0 ? Math.PI - t : -Math.sin(n * t) / n);
  const charge = mode.charges.reduce((sum, value, n) => sum + value * (n < functions ? above(n) : 1), 0);
  return 2 * Math.PI * mode.resonance * charge;
}

/**
 * The lowest modes.
 * @param inductance H, section matrix of the winding, `sections`² values
 * @param functions number of charge functions in the elastance, the top charge not counted
 * @param count how many modes
 */
export function secondaryModes(
  elastance: Elastance,
  functions: number,
  inductance: Float64Array,
  sections: number,
  count = 3,
): SecondaryMode[] {
  const { size, factor: lower } = elastance;
  const shapes = currentShapes(sections, functions, size);
  const fluxes = sectionFluxes(inductance, shapes, sections, size);
  const eigen = new EigenvalueDecomposition(
    reduced(lower, magneticMatrix(shapes, fluxes, sections, size), size),
    { assumeSymmetric: true },
  );
  const order = eigen.realEigenvalues
    .map((value, index) => ({ value, index }))
    .sort((a, b) => b.value - a.value);
  return order.slice(0, count).map(({ value, index }) => {
    const charges = backward(lower, size, eigen.eigenvectorMatrix.getColumn(index));
    return scaledMode(charges, 1 / Math.sqrt(value), shapes, fluxes, elastance, sections);
  });
}
