/**
 * Values so far from any real coil that the models do not hold and the arithmetic may fail. The span of each field
 * follows from its declared range; stages that read a value beyond it are not run.
 */
import type { DesignParts } from "../calc/design-parts";
import { fieldValues } from "../design/changeAt";
import { allFields } from "../fields/allFields";
import type { NumberField } from "../fields/field";

/** Factor below and above its declared range within which a field can still be computed with. */
const SPAN_FACTOR = 1e3;
/** Smaller factors for fields that determine the computing time. */
const NARROWER_FACTORS: Record<string, number> = { "secondary.turns": 10, "primary.turns": 1.5 };
/** Share of a field's largest value; a field that may be zero cannot be computed with between zero and this. */
const LEAST_PART = 1e-12;
/** K, where resistivities are linear in temperature. */
const TEMPERATURES = { least: 100, most: 2000 };

export interface Span {
  least: number;
  most: number;
}

/** SI, the span of values that can be computed with; zero is always allowed if the field accepts it. */
export function solvableSpan({ path, dimension, range: { minimum, maximum } }: NumberField): Span {
  if (dimension === "temperature") return TEMPERATURES;
  const factor = NARROWER_FACTORS[path] ?? SPAN_FACTOR;
  return {
    least: minimum > 0 ? minimum / factor : LEAST_PART * maximum,
    most: maximum * factor,
  };
}

export interface BeyondSpan {
  /** with indices */
  path: string;
  value: number;
  /** the end of the span that is exceeded */
  limit: number;
}

/** Fields that no model reads. */
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

/** Fields that determine the conductors' positions and sizes. */
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
/** Fields that determine the primary circuit, except the shape of its conductor. */
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
/** Fields that determine a burst, except its circuits. */
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

/** A stage that does not run if a value that it reads is beyond its span. */
export function guarded<Before extends readonly unknown[], Result>(
  paths: readonly string[],
  otherwise: Result,
  run: (design: DesignParts, ...before: Before) => Result,
): (design: DesignParts, ...before: Before) => Result {
  return (design, ...before) => (areSolvable(design, paths) ? run(design, ...before) : otherwise);
}
