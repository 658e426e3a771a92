import { ELECTRIC_CONSTANT } from "../constants";
import type { Corrections, Secondary } from "../design-parts";
import type { SecondaryMode } from "./secondaryModes";

/**
 * Capacitance that a dielectric former adds to a mode, F at the top: to first order the field stays and
 * its energy in the wall grows by (εᵣ − 1). In a thin wall just inside the winding the field is the
 * winding's own gradient, dV/dz; the radial part is small inside a coil.
 *
 * ΔC = ε₀(εᵣ − 1)·2πR·w·∫(dV/dz)² dz / V_top²
 *
 * Source: jackson, sec. 4.7 (energy of a dielectric in a given field).
 * @param radius m, of the wall's middle
 * @param wall m, thickness, small against the radius
 * @param length m, of the winding
 */
export function formerCapacitance(
  mode: SecondaryMode,
  radius: number,
  wall: number,
  permittivity: number,
  length: number,
): number {
  const step = length / (mode.voltage.length - 1);
  let squares = 0;
  for (let s = 1; s < mode.voltage.length; s++)
    squares += (mode.voltage[s] - mode.voltage[s - 1]) ** 2 / step;
  return ELECTRIC_CONSTANT * (permittivity - 1) * 2 * Math.PI * radius * wall * squares;
}

type Former = Pick<Secondary, "formerDiameter" | "formerWall" | "formerPermittivity" | "windingLength">;

/** Factor by which a former lowers a mode's frequency: √(C/(C + ΔC)). */
function factorOf(mode: SecondaryMode, former: Former): number {
  const { formerDiameter, formerPermittivity, windingLength } = former;
  // a finding reports a wall thicker than the radius
  const wall = Math.min(former.formerWall, 0.5 * formerDiameter);
  const radius = 0.5 * (formerDiameter - wall);
  const added = formerCapacitance(mode, radius, wall, formerPermittivity, windingLength);
  return Math.sqrt(mode.effectiveCapacitance / (mode.effectiveCapacitance + added));
}

/** Factor by which the former lowers a mode's frequency; 1 where its correction is switched off. */
export function formerFactor(
  mode: SecondaryMode,
  former: Former,
  corrections: Pick<Corrections, "former">,
): number {
  return corrections.former ? factorOf(mode, former) : 1;
}

/** Relative change of a mode's frequency that the former makes, whether its correction is on or off. */
export function formerShift(mode: SecondaryMode, former: Former): number {
  return factorOf(mode, former) - 1;
}
