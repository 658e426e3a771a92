/**
 * Ratios of Bessel functions of complex argument, Jₙ(z)/Jₙ₋₁(z), by the backward continued fraction
 * rₙ = 1/(2n/z − rₙ₊₁). Backward, because J is the minimal solution of the recurrence.
 *
 * Source: abramowitzStegun, 9.1.73; nistDlmf, 10.10, 10.74(v).
 */

export interface ComplexArrays {
  real: Float64Array;
  imaginary: Float64Array;
}

/**
 * Jₙ/Jₙ₋₁ at z = (1 − j)·x for n = 1 … `orders` (index n; index 0 unused).
 * @param x real, > 0: for a wire, its radius over the skin depth
 */
export function besselRatios(x: number, orders: number): ComplexArrays {
  const real = new Float64Array(orders + 1);
  const imaginary = new Float64Array(orders + 1);
  let re = 0;
  let im = 0;
  for (let n = Math.ceil(1.5 * x) + orders + 30; n >= 1; n--) {
    const a = n / x - re; // 2n/z = n(1 + j)/x
    const b = n / x - im;
    const norm = a * a + b * b;
    re = a / norm;
    im = -b / norm;
    if (n <= orders) {
      real[n] = re;
      imaginary[n] = im;
    }
  }
  return { real, imaginary };
}
