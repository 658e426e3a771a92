import type { NumberField } from "../../fields/field";
import { hasMeaning, type Meaning } from "../../fields/meaning";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";

const RANGE_DIGITS = 7;

/** A limit as declared. */
function limitText(limit: number, { dimension }: NumberField, system: UnitSystem): string {
  return formatQuantity(limit, dimension, system, RANGE_DIGITS).text;
}

/** The usual range, such as “0.5 to 40 turns”. */
export function rangeText(field: NumberField, system: UnitSystem): string {
  const { minimum, maximum } = field.range;
  return `${limitText(minimum, field, system)} to ${limitText(maximum, field, system)}`;
}

/** The requirement on a number that is bounded below only. */
function minimumText({ minimum, aboveMinimum, whole }: Meaning): string {
  if (whole) return `a whole number, ${aboveMinimum ? minimum + 1 : minimum} or more`;
  return aboveMinimum ? "above zero" : "zero or more";
}

function requirement(field: NumberField, value: number, system: UnitSystem): string {
  const { meaning } = field;
  if (!Number.isFinite(value)) return "a finite number";
  if (meaning.maximum === Number.POSITIVE_INFINITY) return minimumText(meaning);
  if (meaning.whole && !Number.isInteger(value)) return "a whole number";
  return `between ${limitText(meaning.minimum, field, system)} and ${limitText(meaning.maximum, field, system)}`;
}

/** A number as typed; in print form if that takes an exponent. */
export function typedText(value: number, { dimension }: NumberField, system: UnitSystem): string {
  const typed = formatQuantity(value, dimension, system, RANGE_DIGITS);
  return typed.number.includes("e") ? formatQuantity(value, dimension, system).text : typed.text;
}

/** Why a number is not valid for a field, in one sentence; null if it is valid. */
export function meaningRefusal(field: NumberField, value: number, system: UnitSystem): string | null {
  if (hasMeaning(field.meaning, value)) return null;
  const text = typedText(value, field, system);
  return `${field.label} must be ${requirement(field, value, system)}, but it is ${text}: change the value.`;
}
