/**
 * Complete elliptic integrals of the first and second kind by the arithmetic–geometric mean.
 *
 * Convention: the argument is the complementary parameter m₁ = 1 − m = 1 − κ², taken from geometry
 * (for two coaxial rings ((a−b)² + d²) / ((a+b)² + d²)), because 1 − m loses all digits as m → 1.
 *
 * Source: abramowitzStegun, 17.6.1–17.6.4; nistDlmf, 19.8(i).
 */

const RELATIVE_GAP = 1e-8; // the mean converges quadratically: the next step is at 1e-16

/**
 * K(m).
 * @param m1 complementary parameter, 0 < m1 ≤ 1; 0 gives Infinity
 */
export function completeEllipticK(m1: number): number {
  let a = 1;
  let b = Math.sqrt(m1);
  while (a - b > RELATIVE_GAP * a) {
    const mean = 0.5 * (a + b);
    b = Math.sqrt(a * b);
    a = mean;
  }
  return Math.PI / (a + b);
}

/** Where {@link completeEllipticKE} leaves its two results, so that the kernels allocate nothing. */
export interface EllipticPair {
  K: number;
  E: number;
}

/**
 * K(m) and E(m) together, written into `result`.
 * @param m1 complementary parameter, 0 < m1 ≤ 1
 */
export function completeEllipticKE(m1: number, result: EllipticPair): void {
  let a = 1;
  let b = Math.sqrt(m1);
  let weight = 0.5;
  let sum = 0.5 * (1 - m1);
  while (a - b > RELATIVE_GAP * a) {
    const mean = 0.5 * (a + b);
    const half = 0.5 * (a - b);
    b = Math.sqrt(a * b);
    a = mean;
    weight *= 2;
    sum += weight * half * half;
  }
  const K = Math.PI / (a + b);
  result.K = K;
  result.E = K * (1 - sum);
}
