/** The path of the conductor of a flat, conical or helical primary. Turns are counted from its start. */

/** The dimensions of a primary's shape; a `Primary` of a design satisfies it. */
export interface PrimaryShape {
  /** m, conductor's centre at the start */
  innerRadius: number;
  /** all turns that are wound */
  turns: number;
  /** m, centre to centre, along the slope */
  pitch: number;
  /** 0 flat, 90 helical */
  inclinationDegrees: number;
  /** m, outside */
  tubeDiameter: number;
  /** m, conductor's centre at the start */
  baseHeight: number;
}

/** A primary's shape alone: everything but its tap, its wall and its leads. */
export function primaryShape({
  innerRadius,
  turns,
  pitch,
  inclinationDegrees,
  tubeDiameter,
  baseHeight,
}: PrimaryShape): PrimaryShape {
  return { innerRadius, turns, pitch, inclinationDegrees, tubeDiameter, baseHeight };
}

/** m, outward and upward advance of the conductor's centre per turn. */
export function advancePerTurn(shape: PrimaryShape): { radial: number; axial: number } {
  const inclination = (shape.inclinationDegrees * Math.PI) / 180;
  return { radial: shape.pitch * Math.cos(inclination), axial: shape.pitch * Math.sin(inclination) };
}

/** m, radius of the conductor's centre `turn` turns from the start. */
export function radiusAtTurn(shape: PrimaryShape, turn: number): number {
  return shape.innerRadius + turn * advancePerTurn(shape).radial;
}

/** m, height of the conductor's centre `turn` turns from the start. */
export function heightAtTurn(shape: PrimaryShape, turn: number): number {
  return shape.baseHeight + turn * advancePerTurn(shape).axial;
}

export interface TurnPlace {
  /** turns from the start, 0, 1, 2 … and the end */
  turn: number;
  radius: number;
  height: number;
}

/** Where the conductor's centre lies at each whole turn and at its end. */
export function turnPlaces(shape: PrimaryShape): TurnPlace[] {
  const { turns } = shape;
  const whole = Array.from({ length: Math.floor(turns) + 1 }, (_, turn) => turn);
  const places = turns > Math.floor(turns) ? [...whole, turns] : whole;
  return places.map((turn) => ({
    turn,
    radius: radiusAtTurn(shape, turn),
    height: heightAtTurn(shape, turn),
  }));
}

/**
 * Whether the conductor can be solved for: sizes positive and finite, and the turns do not overlap.
 * (A tap past the end is not a fault of the shape.)
 */
export function isSolvableShape(shape: PrimaryShape): boolean {
  const { innerRadius, turns, pitch, tubeDiameter, baseHeight, inclinationDegrees } = shape;
  const positive = [innerRadius, turns, pitch, tubeDiameter].every(
    (size) => size > 0 && Number.isFinite(size),
  );
  const placed = Number.isFinite(baseHeight) && Number.isFinite(inclinationDegrees);
  if (!positive || !placed || turns > MOST_TURNS) return false;
  const innermost = Math.min(innerRadius, radiusAtTurn(shape, turns));
  return innermost > tubeDiameter / 2 && (turns <= 1 || pitch > tubeDiameter);
}

/** More turns than any tube primary has; beyond it the solve would hold up an edit. */
const MOST_TURNS = 60;

/**
 * m, length of the conductor from the start to `turn`: ∫√(r² + (p/2π)²) dφ with r linear in φ.
 *
 * Source: geometry, arc length of the Archimedean spiral with the primitive ½[r·s + c²·asinh(r/c)].
 */
export function conductorLength(shape: PrimaryShape, turn: number): number {
  const radialPerRadian = advancePerTurn(shape).radial / (2 * Math.PI);
  const advance = shape.pitch / (2 * Math.PI);
  const start = shape.innerRadius;
  const end = radiusAtTurn(shape, turn);
  if (Math.abs(end - start) < 1e-6 * start) {
    return 2 * Math.PI * turn * Math.hypot(0.5 * (start + end), advance);
  }
  return (lengthPrimitive(end, advance) - lengthPrimitive(start, advance)) / radialPerRadian;
}

function lengthPrimitive(radius: number, advance: number): number {
  return 0.5 * (radius * Math.hypot(radius, advance) + advance * advance * Math.asinh(radius / advance));
}
