/**
 * Cholesky factorisation of a symmetric positive definite matrix in a flat array, row by row. Written
 * out here because it runs inside a display frame on every edit, on typed arrays without copies.
 *
 * Source: Golub & Van Loan, Matrix Computations, algorithm 4.2.2.
 */

/** Lower factor in place (only the lower triangle is read); `null` if not positive definite. */
export function factorise(matrix: Float64Array, size: number): Float64Array | null {
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j] as number;
      for (let k = 0; k < j; k++) sum -= (matrix[i * size + k] as number) * (matrix[j * size + k] as number);
      if (i === j && !(sum > 0 && Number.isFinite(sum))) return null;
      matrix[i * size + j] = i === j ? Math.sqrt(sum) : sum / (matrix[j * size + j] as number);
    }
  }
  return matrix;
}

/** Solves with the factor of {@link factorise}; the right-hand side becomes the solution. */
export function solveFactorised(factor: Float64Array, size: number, side: Float64Array): void {
  for (let i = 0; i < size; i++) {
    let sum = side[i] as number;
    for (let k = 0; k < i; k++) sum -= (factor[i * size + k] as number) * (side[k] as number);
    side[i] = sum / (factor[i * size + i] as number);
  }
  for (let i = size - 1; i >= 0; i--) {
    const value = (side[i] as number) / (factor[i * size + i] as number);
    side[i] = value;
    for (let k = 0; k < i; k++) side[k] = (side[k] as number) - (factor[i * size + k] as number) * value;
  }
}
