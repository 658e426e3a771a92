/**
 * Alternating-current resistance of a single-layer winding from its actual current profile.
 *
 * Each section's wire sees its own current, its neighbours' (an endless row), and the mean axial and
 * radial field that the whole profile makes at its place: sections are current sheets of equal radius,
 * so their fields need only a table over the distance.
 *
 * Source: as in `proximity`, the response of a row; smythe1950, sec. 7.10 (ring potential), for the field on a
 * current sheet, and the sheet's axial field z·K(m)/(2π√(z² + 4a²)) per end.
 */
import { MAGNETIC_CONSTANT } from "../constants";
import { completeEllipticK } from "../field/elliptic";
import { ringMutualInductance } from "../field/loops";
import type { RoundWireWinding } from "../field/windingInductance";
import { skinDepth, wireResistance } from "./conductor";
import { rowLoss } from "./proximity";

export interface WindingLoss {
  /** Ω, loss/(½·Î²) referred to unit amplitude in `currents` */
  resistance: number;
  /** Ω, likewise with direct-current resistance and the same profile */
  directCurrentResistance: number;
  /** Ω, the part of `resistance` due to the field along the winding, and across it */
  alongField: number;
  acrossField: number;
}

/** m, length of the wire (helix). */
export function windingWireLength(winding: RoundWireWinding): number {
  return winding.turns * Math.hypot(2 * Math.PI * winding.radius, winding.pitch);
}

/**
 * @param currents profile over equal sections of the turns, e.g. 1 at the base; resistances refer to 1
 * @param frequency Hz
 * @param ohmMetres Ω·m, of the wire at its temperature
 * Valid for a single layer of round wire, pitch > bare diameter (NaN otherwise).
 */
export function windingAcResistance(
  winding: RoundWireWinding,
  currents: ArrayLike<number>,
  frequency: number,
  ohmMetres: number,
): WindingLoss {
  const diameter = 2 * winding.conductorRadius;
  const sections = currents.length;
  const touching = !(diameter < winding.pitch);
  const row = rowLoss(
    diameter / skinDepth(ohmMetres, frequency),
    touching ? Number.NaN : diameter / winding.pitch,
  );
  const field = sheetFields(winding, currents);
  let [own, along, across] = [0, 0, 0];
  for (let s = 0; s < sections; s++) {
    own += currents[s] ** 2;
    along += (2 * field.axial[s]) ** 2;
    across += (2 * field.radial[s]) ** 2;
  }
  const section = wireResistance(windingWireLength(winding), diameter, ohmMetres) / sections;
  const alongField = section * row.alongField * along;
  const acrossField = section * row.acrossField * across;
  return {
    resistance: section * row.current * own + alongField + acrossField,
    directCurrentResistance: section * own,
    alongField,
    acrossField,
  };
}

/** Mean field at each section's middle, in units of current/pitch. */
function sheetFields(
  winding: RoundWireWinding,
  currents: ArrayLike<number>,
): { axial: Float64Array; radial: Float64Array } {
  const sections = currents.length;
  const height = (winding.turns * winding.pitch) / sections;
  const axialEnd = Float64Array.from({ length: sections }, (_, k) =>
    sheetAxialEnd(winding.radius, (k + 0.5) * height),
  );
  const radialEnd = Float64Array.from({ length: sections }, (_, k) =>
    sheetRadialEnd(winding.radius, (k + 0.5) * height),
  );
  const axial = new Float64Array(sections);
  const radial = new Float64Array(sections);
  for (let s = 0; s < sections; s++) {
    for (let t = 0; t < sections; t++) {
      const apart = Math.abs(s - t);
      const current = currents[t];
      const inner = apart === 0 ? -axialEnd[0] : axialEnd[apart - 1];
      axial[s] = axial[s] + current * (axialEnd[apart] - inner);
      if (apart > 0) {
        const difference = radialEnd[apart - 1] - radialEnd[apart];
        radial[s] = radial[s] + Math.sign(s - t) * current * difference;
      }
    }
  }
  return { axial, radial };
}

/** Axial field at the rim of a sheet that ends `distance` away, mean of inside and outside. */
function sheetAxialEnd(radius: number, distance: number): number {
  const farthest = Math.hypot(distance, 2 * radius);
  return (distance * completeEllipticK((distance / farthest) ** 2)) / (2 * Math.PI * farthest);
}

/** A_φ of the rim, per μ₀: its differences are the sheet's radial field. */
function sheetRadialEnd(radius: number, distance: number): number {
  return ringMutualInductance(radius, radius, distance) / (2 * Math.PI * radius * MAGNETIC_CONSTANT);
}
