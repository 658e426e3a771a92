/** Alternating-current resistance of the tube primary, from the surface currents of its solve. */
import { skinDepth } from "./conductor";
import { isOnConductor, type PrimarySolution } from "./primary";
import { conductorLength } from "./primaryGeometry";
import { readTurnTable } from "./turnTable";

/**
 * Ω per square of a wall with the field on one side: (ρ/δ)·(sinh 2x + sin 2x)/(cosh 2x − cos 2x),
 * x = wall/δ; from ρ/wall (thin) to ρ/δ (thick).
 *
 * Source: ramo, sec. 3.17 (plane conductor of finite thickness, real part of (1 + j)·coth((1 + j)x)).
 */
export function wallResistance(wall: number, frequency: number, ohmMetres: number): number {
  const depth = skinDepth(ohmMetres, frequency);
  const twice = Math.min((2 * wall) / depth, 40); // beyond it the ratio is 1 to the last digit
  return ((ohmMetres / depth) * (Math.sinh(twice) + Math.sin(twice))) / (Math.cosh(twice) - Math.cos(twice));
}

/**
 * Ω from the start to the tap: Rₛ∮K² over all turns; the unused ones add the loss of their eddy currents.
 * `null` if the tap is not on the conductor. Valid for a skin depth ≪ tube diameter.
 *
 * @param frequency Hz
 * @param ohmMetres Ω·m
 */
export function primaryAcResistance(
  solution: PrimarySolution,
  tap: number,
  frequency: number,
  ohmMetres: number,
): number | null {
  if (!isOnConductor(solution, tap)) return null;
  const { tube } = solution;
  const squares = conductorLength(tube, tap) / (Math.PI * tube.tubeDiameter);
  const wall = Math.min(tube.wallThickness, tube.tubeDiameter / 2);
  return squares * wallResistance(wall, frequency, ohmMetres) * readTurnTable(solution.lossFactor, tap);
}
