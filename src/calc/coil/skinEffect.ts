/**
 * Skin effect of an isolated round wire, exactly: Z/R₀ = (z/2)·J₀(z)/J₁(z), z = (1 − j)·(d/2δ).
 *
 * Source: smythe1950, sec. 10.04; ramo, sec. 4.5.
 */
import { MAGNETIC_CONSTANT } from "../constants";
import { besselRatios } from "./besselRatio";

export interface RoundWireSkinEffect {
  /** alternating over direct current resistance, ≥ 1 */
  resistanceRatio: number;
  /** internal inductance over its direct-current value μ₀/8π per metre, ≤ 1 */
  internalInductanceRatio: number;
}

/** @param diameterOverSkinDepth d/δ > 0 */
export function roundWireSkinEffect(diameterOverSkinDepth: number): RoundWireSkinEffect {
  const x = diameterOverSkinDepth / 2;
  const { real, imaginary } = besselRatios(x, 1);
  const re = real[1];
  const im = imaginary[1];
  const norm = re * re + im * im;
  const resistanceRatio = (0.5 * x * (re - im)) / norm;
  const reactanceRatio = (-0.5 * x * (re + im)) / norm;
  return { resistanceRatio, internalInductanceRatio: reactanceRatio / (0.25 * x * x) };
}

/** H/m, internal inductance of a round wire with uniform current, μ₀/8π (any radius). */
export const UNIFORM_INTERNAL_INDUCTANCE = MAGNETIC_CONSTANT / (8 * Math.PI);

/**
 * H/m, internal inductance of a round tube whose wall carries the current evenly.
 * Source: grover1946, ch. 3 (geometric mean distance of an annulus).
 */
export function tubeInternalInductance(outerRadius: number, wall: number): number {
  const inner = outerRadius - wall;
  if (!(inner > 0)) return UNIFORM_INTERNAL_INDUCTANCE;
  const q = (inner / outerRadius) ** 2;
  const rest = 1 - q;
  const bracket = (-0.5 * q * q * Math.log(q)) / (rest * rest) - (3 * q - 1) / (4 * rest);
  return rest < 1e-3 ? 0 : (MAGNETIC_CONSTANT / (2 * Math.PI)) * bracket;
}
