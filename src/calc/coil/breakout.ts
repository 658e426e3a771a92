/**
 * The voltage at which air breaks down at the top load.
 *
 * Relative air density δ = 2.94·10⁻³·p/T with 25 °C as base.
 * Source: peek1929, ch. 4 (parallel wires and spheres).
 */
import type { Air, TopLoadElement } from "../design-parts";

/** Relative air density, 1 at 25 °C and 101 kPa. */
export function relativeAirDensity({ temperature, pressure }: Air): number {
  return (2.94e-3 * pressure) / temperature;
}

interface PeekConstants {
  /** V/m */
  field: number;
  /** √cm */
  curvature: number;
}

const CYLINDER: PeekConstants = { field: 30e5, curvature: 0.301 };
const SPHERE: PeekConstants = { field: 27.2e5, curvature: 0.54 };

/** E = E₀·δ·(1 + c/√(δr)), V/m, r the radius of curvature in m. */
function peekField({ field, curvature }: PeekConstants, radius: number, density: number): number {
  return field * density * (1 + curvature / Math.sqrt(density * radius * 100));
}

/** Critical gradient at the surface of an element of the top load, V/m. */
export function criticalField(element: TopLoadElement, air: Air, surfaceFactor: number): number {
  const density = relativeAirDensity(air);
  const field =
    element.shape === "toroid"
      ? peekField(CYLINDER, element.tubeDiameter / 2, density)
      : peekField(SPHERE, element.diameter / 2, density);
  return field * surfaceFactor;
}

export interface VoltageBand {
  low: number;
  typical: number;
  high: number;
}

/** A point is off the axis and tiny: half and one and a half of the estimate bound it. */
const BAND = 1.5;

/**
 * Estimate of the voltage at which a breakout point opens, V: the point as half of a slender prolate
 * spheroid on a surface whose field is E, of the point's length and tip radius. The field at its tip is
 * E/n with the depolarisation factor n along the axis.
 *
 * The tip is treated as Peek's sphere. An estimate with a band, not a solution.
 * Source: stratton1941, sec. 3.26–3.27 (spheroid in a uniform field).
 * @param fieldPerVolt largest surface field of the smooth top load, V/m per volt
 */
export function pointBreakoutVoltage(
  point: { length: number; tipRadius: number },
  fieldPerVolt: number,
  air: Air,
): VoltageBand {
  // the tip's radius of curvature is b²/a of the half axes a (the length) and b
  const tip = Math.min(point.tipRadius, point.length);
  const eccentricity = Math.sqrt(Math.max(0, 1 - tip / point.length));
  const depolarisation =
    eccentricity < 0.01
      ? 1 / 3
      : ((1 - eccentricity ** 2) / eccentricity ** 3) * (Math.atanh(eccentricity) - eccentricity);
  const typical =
    (peekField(SPHERE, point.tipRadius, relativeAirDensity(air)) * depolarisation) / fieldPerVolt;
  return { low: typical / BAND, typical, high: typical * BAND };
}
