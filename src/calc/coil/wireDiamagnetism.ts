import type { RoundWireWinding } from "../field/windingInductance";
import { besselRatios } from "./besselRatio";

/**
 * Part by which eddy currents in the wire lower a long winding's inductance: each wire stands in half
 * the field of the winding and pushes flux out as a round cylinder in a transverse field does,
 * ΔL/L = −π·a²/(R·p)·Re D with D = −J₂(z)/J₀(z), z = (1 − j)·a/δ, from 0 (slow) to 1 (perfect conductor).
 *
 * To first order in a²/(R·p); the ends of a short winding are taken as its middle,
 * and each wire is taken alone, which finds three quarters of what close neighbours do together.
 * Source: smythe1950, ch. 11 (cylinder in an alternating transverse field).
 * @param skinDepth m
 */
export function wireDiamagnetism(
  { conductorRadius, radius, pitch }: RoundWireWinding,
  skinDepth: number,
): number {
  const { real, imaginary } = besselRatios(conductorRadius / skinDepth, 2);
  const expelled = -(real[1] * real[2] - imaginary[1] * imaginary[2]);
  return ((Math.PI * conductorRadius ** 2) / (radius * pitch)) * expelled;
}
