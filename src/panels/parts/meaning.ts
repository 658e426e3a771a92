import type { NumberField } from "../../design/field";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";

const clauses: Record<NumberField["meaning"], string> = {
  any: "must be a finite number",
  positive: "must be above zero",
  "zero or more": "cannot be below zero",
  "positive whole": "must be a whole number, 1 or more",
  "zero or more whole": "must be a whole number, 0 or more",
};

function hasMeaning(meaning: NumberField["meaning"], value: number): boolean {
  if (!Number.isFinite(value)) return false;
  if (meaning.endsWith("whole") && !Number.isInteger(value)) return false;
  if (meaning === "any") return true;
  return meaning.startsWith("positive") ? value > 0 : value >= 0;
}

/** Why a number can be no value of a field, in one sentence; null where it can. */
export function meaningRefusal(field: NumberField, value: number, system: UnitSystem): string | null {
  if (hasMeaning(field.meaning, value)) return null;
  const text = formatQuantity(value, field.dimension, system).text;
  return `${field.label} ${clauses[field.meaning]}, and ${text} is not: change the figure.`;
}
