/**
 * Elimination without exchange of rows, for the diagonally dominant matrices of the boundary-element
 * solves. Because rows keep their order, the factors of a leading part are the leading part of the
 * factors: the solution without the last unknowns costs nothing more.
 *
 * Source: golubVanLoan, sec. 3.2 (outer-product LU).
 */

/**
 * Factorises in place: L below the diagonal with ones on it, U on and above.
 * @param matrix size² values, row by row
 * @returns false if a pivot vanishes or is not finite
 */
export function factorise(matrix: Float64Array, size: number): boolean {
  for (let k = 0; k < size; k++) {
    const pivot = matrix[k * size + k];
    if (!(Math.abs(pivot) > 0) || !Number.isFinite(pivot)) return false;
    for (let i = k + 1; i < size; i++) {
      const factor = matrix[i * size + k] / pivot;
      matrix[i * size + k] = factor;
      for (let j = k + 1; j < size; j++) matrix[i * size + j] -= factor * matrix[k * size + j];
    }
  }
  return true;
}

/**
 * Solves for several right-hand sides at once, in place.
 * @param factors as {@link factorise} left them, `stride` columns
 * @param size how many leading unknowns take part
 * @param sides size × count values, row by row
 */
export function substitute(
  factors: Float64Array,
  stride: number,
  size: number,
  sides: Float64Array,
  count: number,
): void {
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < i; k++) {
      const factor = factors[i * stride + k];
      for (let c = 0; c < count; c++) sides[i * count + c] -= factor * sides[k * count + c];
    }
  }
  for (let i = size - 1; i >= 0; i--) {
    for (let k = i + 1; k < size; k++) {
      const factor = factors[i * stride + k];
      for (let c = 0; c < count; c++) sides[i * count + c] -= factor * sides[k * count + c];
    }
    const pivot = factors[i * stride + i];
    for (let c = 0; c < count; c++) sides[i * count + c] /= pivot;
  }
}
