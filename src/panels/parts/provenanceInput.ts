import { valueAt } from "../../design/changeAt";
import type { Design } from "../../design/design";
import type { Evaluation } from "../../evaluation/evaluation";
import { INPUT_GROUPS } from "../../evaluation/register/inputGroups";
import { entryAt, resultValue } from "../../evaluation/register/register";
import { fieldAt } from "../../fields/allFields";
import type { Field } from "../../fields/field";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";

export interface ProvenanceInput {
  label: string;
  /** the present value as text; null if it is more than one number */
  value: string | null;
  /** path of the field that sets it; null for a result */
  field: string | null;
}

const NONE = "–";

function shown(field: Field, value: unknown, system: UnitSystem): string {
  if (value === undefined || value === null) return NONE;
  if (field.kind === "switch") return value ? "on" : "off";
  if (field.kind === "choice") return String(value);
  return formatQuantity(Number(value), field.dimension, system).text;
}

/** An input of a result, with its value in the open design. An unknown name is shown as it is. */
export function provenanceInput(
  id: string,
  design: Design,
  evaluation: Evaluation,
  system: UnitSystem,
): ProvenanceInput {
  const group = INPUT_GROUPS[id];
  if (group) return { ...group, value: null };
  const field = fieldAt(id);
  if (field) return { label: field.label, value: shown(field, valueAt(design, id), system), field: id };
  const entry = entryAt(id);
  if (!entry) return { label: id, value: null, field: null };
  if (id.includes("*")) return { label: entry.label, value: null, field: null };
  const { text } = formatQuantity(resultValue(evaluation, id), entry.dimension, system);
  return { label: entry.label, value: text, field: null };
}
