/**
 * Values so far from anything that is built that no model says anything of them, and the arithmetic itself gives
 * way. Each field's span follows from its declared range; what reads a value beyond it is not solved.
 */
import type { DesignParts } from "../calc/design-parts";
import { fieldValues } from "../design/changeAt";
import { allFields } from "../fields/allFields";
import type { NumberField } from "../fields/field";

/** How far below and above its declared range a field can still be computed with. */
const WIDELY = 1e3;
/** Fields whose cost or meaning grows with them: less far. */
const LESS_WIDELY: Record<string, number> = { "secondary.turns": 10, "primary.turns": 1.5 };
/** Of the largest value of a field that may be zero: what is smaller and not zero is neither. */
const LEAST_PART = 1e-12;
/** K: resistivities are straight lines there. */
const TEMPERATURES = { least: 100, most: 2000 };

export interface Span {
  least: number;
  most: number;
}

/** SI, within which a field's value can be computed with; zero, where a document may hold it, can be too. */
export function solvableSpan({ path, dimension, range: { minimum, maximum } }: NumberField): Span {
  if (dimension === "temperature") return TEMPERATURES;
  const factor = LESS_WIDELY[path] ?? WIDELY;
  return {
    least: minimum > 0 ? minimum / factor : LEAST_PART * maximum,
    most: maximum * factor,
  };
}

export interface BeyondSpan {
  /** with indices */
  path: string;
  value: number;
  /** the end of the span that is passed */
  limit: number;
}

/** These say nothing to any model: how far people stand, what a unit costs. */
const NOT_COMPUTED_WITH: readonly string[] = ["room.audienceDistance"];

function beyondOf(design: DesignParts, field: NumberField): BeyondSpan[] {
  if (NOT_COMPUTED_WITH.includes(field.path)) return [];
  const { least, most } = solvableSpan(field);
  return fieldValues(design, field.path).flatMap(({ path, value }): BeyondSpan[] => {
    if (typeof value !== "number" || value === 0) return [];
    if (value < least) return [{ path, value, limit: least }];
    return value > most ? [{ path, value, limit: most }] : [];
  });
}

const KNOWN = new WeakMap<DesignParts, BeyondSpan[]>();

/** Every value of a design that lies beyond its span. */
export function beyondSpans(design: DesignParts): BeyondSpan[] {
  const known = KNOWN.get(design);
  if (known) return known;
  const found = allFields.flatMap((field) => (field.kind === "number" ? beyondOf(design, field) : []));
  KNOWN.set(design, found);
  return found;
}

/** What the conductors' places and sizes are read from. */
export const PRIMARY_SHAPE: readonly string[] = [
  "innerRadius",
  "turns",
  "pitch",
  "inclinationDegrees",
  "tubeDiameter",
  "baseHeight",
].map((name) => `primary.${name}`);
export const SECONDARY_SHAPE: readonly string[] = [
  "formerDiameter",
  "windingLength",
  "turns",
  "wire",
  "baseHeight",
].map((name) => `secondary.${name}`);
/** What the primary circuit is read from, its conductor's shape left aside. */
export const PRIMARY_CIRCUIT: readonly string[] = [
  "tank.unit.capacitance",
  "tank.unit.dissipationFactor",
  "tank.unitsInSeries",
  "tank.strings",
  "corrections.lossAllowance",
  "air.temperature",
  "drive.switch.onStateResistance",
  "drive.switch.parallelDevices",
  "primary.leadInductance",
];
/** What a burst is read from, its circuits left aside. */
export const BURST: readonly string[] = [
  "drive.supply.mainsVoltage",
  "drive.reservoir",
  "drive.switch.onState",
  "drive.switch.turnOff",
  "drive.switch.parallelDevices",
  "drive.commutation",
  "drive.overCurrentLimit",
  "spark",
  "interrupter.onTime",
];

/**
 * Whether every value under some paths can be computed with.
 * @param paths beginnings of paths, as `secondary` or `drive.switch`
 */
export function areSolvable(design: DesignParts, paths: readonly string[]): boolean {
  const beyond = beyondSpans(design);
  return beyond.length === 0 || !beyond.some(({ path }) => paths.some((start) => path.startsWith(start)));
}

/** A stage that does not run where a value that it reads lies beyond its span. */
export function guarded<Before extends readonly unknown[], Result>(
  paths: readonly string[],
  otherwise: Result,
  run: (design: DesignParts, ...before: Before) => Result,
): (design: DesignParts, ...before: Before) => Result {
  return (design, ...before) => (areSolvable(design, paths) ? run(design, ...before) : otherwise);
}
