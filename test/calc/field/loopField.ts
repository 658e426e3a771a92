/**
 * Magnetic field of a circular filament anywhere off the wire.
 *
 * Source: Smythe, Static and Dynamic Electricity, 7.10, eqs. (6), (7).
 */
import { MAGNETIC_CONSTANT } from "../../../src/calc/constants";
import { completeEllipticKE, type EllipticPair } from "../../../src/calc/field/elliptic";

/** T per ampere */
export interface AxialField {
  radial: number;
  axial: number;
}

const elliptic: EllipticPair = { K: 0, E: 0 };

/**
 * Flux density per ampere, T/A, written into `field`.
 * @param loopRadius m
 * @param radius m, distance of the point from the axis, ≥ 0
 * @param distance m, of the point above the loop's plane
 */
export function loopField(loopRadius: number, radius: number, distance: number, field: AxialField): void {
  const farthestSquared = (loopRadius + radius) ** 2 + distance * distance;
  const nearestSquared = (loopRadius - radius) ** 2 + distance * distance;
  completeEllipticKE(nearestSquared / farthestSquared, elliptic);
  const { K, E } = elliptic;
  const scale = MAGNETIC_CONSTANT / (2 * Math.PI * Math.sqrt(farthestSquared));
  const squares = loopRadius * loopRadius - distance * distance;
  field.axial = scale * (K + ((squares - radius * radius) / nearestSquared) * E);
  const sum = loopRadius * loopRadius + distance * distance;
  const near = radius < 1e-4 * Math.sqrt(farthestSquared);
  field.radial = near
    ? (0.75 * MAGNETIC_CONSTANT * loopRadius * loopRadius * radius * distance) / sum ** 2.5
    : ((scale * distance) / radius) * (-K + ((sum + radius * radius) / nearestSquared) * E);
}
