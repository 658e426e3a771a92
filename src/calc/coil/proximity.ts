/**
 * Proximity effect in a row of equal round wires (a single-layer winding), exactly for the row: the
 * wires' fields as multipoles r⁻ⁿ, each wire's response a ratio of Bessel functions, all wires coupled.
 *
 * | symbol | code name | meaning |
 * | aₙ, bₙ | incident, scattered | A = Σ (aₙrⁿ + bₙr⁻ⁿ)·(sin or cos)nθ around a wire |
 * | τₙ | response | bₙ/(aₙR²ⁿ) = Jₙ₊₁(z)/Jₙ₋₁(z), z = (1 − j)R/δ |
 * | ζ | zeta | Riemann's zeta function, from the sum over neighbours at ±p, ±2p … |
 *
 * aₙ = sₙ ± Σₖ C(n+k−1, n)·2ζ(n+k)·(R/p)^(n+k)·τₖaₖ in units of the wire's radius. Odd orders are driven
 * by the transverse field from the rest of the coil, even ones by the neighbours' own currents. Loss per
 * length −(πωn/μ₀)|aₙ|²·Im τₙ. Orders 1–4.
 *
 * Source: smythe1950, sec. 10.05 ff. (cylinder in an alternating field); rayleigh1892 (method of coupled
 * cylinders).
 */
import { add, type Complex, complex, divide, multiply, scale, subtract } from "../linear/complex";
import { besselRatios } from "./besselRatio";
import { roundWireSkinEffect } from "./skinEffect";

export interface RowLoss {
  /** over the direct-current resistance: own current and the neighbours' equal currents */
  current: number;
  /** likewise for a transverse field along the row of I/(2·pitch), added in power */
  alongField: number;
  /** likewise for a transverse field across the row (normal to its plane) of I/(2·pitch) */
  acrossField: number;
}

const ORDERS = 4;
const ONE = complex(1);

/** ζ(2) … ζ(8). Source: abramowitzStegun, table 23.3. */
const ZETA = [
  0, 0, 1.64493406684823, 1.20205690315959, 1.08232323371114, 1.03692775514337, 1.01734306198445,
  1.00834927738192, 1.00407735619794,
];

/**
 * Loss coefficients of one wire in an endless row.
 * @param diameterOverSkinDepth d/δ > 0
 * @param diameterOverPitch d/p, 0 < d/p < 1 (bare wire)
 * Within 0.5 % of finite elements for d/p ≤ 0.95 and d/δ ≤ 20.
 */
export function rowLoss(diameterOverSkinDepth: number, diameterOverPitch: number): RowLoss {
  const x = diameterOverSkinDepth / 2;
  const fill = diameterOverPitch / 2;
  const response = multipoleResponse(x);
  const field = [fill, 0];
  const neighbours = [2, 4].map((n) => (2 * ZETA[n] * fill ** n) / n);
  const loss = (orders: number[], sources: number[], sign: number) =>
    multipoleLoss(x, orders, solvePair(orders, sources, response, fill, sign), response);
  return {
    current: roundWireSkinEffect(diameterOverSkinDepth).resistanceRatio + loss([2, 4], neighbours, 1),
    alongField: loss(
      [1, 3],
      field.map((value) => value * Math.PI),
      1,
    ),
    acrossField: loss(
      [1, 3],
      field.map((value) => value * Math.PI),
      -1,
    ),
  };
}

/** τₙ = (Jₙ₊₁/Jₙ)(Jₙ/Jₙ₋₁), index n. */
function multipoleResponse(x: number): Complex[] {
  const { real, imaginary } = besselRatios(x, ORDERS + 1);
  return Array.from({ length: ORDERS + 1 }, (_, n) => {
    return multiply(complex(real[n], imaginary[n]), complex(real[n + 1], imaginary[n + 1]));
  });
}

/** The two coupled incident amplitudes, from (1 − σG₁₁τ₁)a₁ − σG₁₂τ₂a₂ = s₁ and its twin. */
function solvePair(
  orders: number[],
  sources: number[],
  response: Complex[],
  fill: number,
  sign: number,
): [Complex, Complex] {
  const [n, k] = orders;
  const coupling = (i: number, j: number): Complex => {
    const strength = sign * binomial(i + j - 1, i) * 2 * ZETA[i + j] * fill ** (i + j);
    return scale(response[j], strength);
  };
  const a = subtract(ONE, coupling(n, n));
  const d = subtract(ONE, coupling(k, k));
  const b = coupling(n, k);
  const c = coupling(k, n);
  const determinant = subtract(multiply(a, d), multiply(b, c));
  const [s, t] = sources;
  return [
    divide(add(scale(d, s), scale(b, t)), determinant),
    divide(add(scale(a, t), scale(c, s)), determinant),
  ];
}

/** Loss over that of the direct current, amplitudes in units of μ₀I/2π. */
function multipoleLoss(x: number, orders: number[], amplitudes: Complex[], response: Complex[]): number {
  let loss = 0;
  orders.forEach((n, i) => {
    const { re, im } = amplitudes[i];
    loss -= n * (re * re + im * im) * response[n].im;
  });
  return x * x * loss;
}

function binomial(n: number, k: number): number {
  let value = 1;
  for (let i = 1; i <= k; i++) value = (value * (n - k + i)) / i;
  return value;
}
