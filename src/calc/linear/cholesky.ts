/**
 * Cholesky factorisation of a symmetric positive definite matrix in a flat array, row by row. Written
 * out here because it runs inside a display frame on every edit, on typed arrays without copies.
 *
 * Source: golubVanLoan, algorithm 4.2.2.
 */

/** Lower factor in place (only the lower triangle is read); `null` if not positive definite. */
export function choleskyFactor(matrix: Float64Array, size: number): Float64Array | null {
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j];
      for (let k = 0; k < j; k++) sum -= matrix[i * size + k] * matrix[j * size + k];
      if (i === j && !(sum > 0 && Number.isFinite(sum))) return null;
      matrix[i * size + j] = i === j ? Math.sqrt(sum) : sum / matrix[j * size + j];
    }
  }
  return matrix;
}

/**
 * Solves with the factor of {@link choleskyFactor}; the right-hand side becomes the solution.
 * @param size unknowns; fewer than were factorised solve the leading part alone
 * @param stride unknowns that were factorised
 * @param first where the right-hand side begins: it is zero before
 */
export function choleskySolve(
  factor: Float64Array,
  size: number,
  side: Float64Array,
  stride = size,
  first = 0,
): void {
  for (let i = first; i < size; i++) {
    let sum = side[i];
    for (let k = first; k < i; k++) sum -= factor[i * stride + k] * side[k];
    side[i] = sum / factor[i * stride + i];
  }
  for (let i = size - 1; i >= 0; i--) {
    const value = side[i] / factor[i * stride + i];
    side[i] = value;
    for (let k = 0; k < i; k++) side[k] = side[k] - factor[i * stride + k] * value;
  }
}
