import { valueAt } from "../../design/changeAt";
import type { Design } from "../../design/design";
import type { Field } from "../../design/field";
import { fieldAt } from "../../design/fields";
import type { Evaluation } from "../../evaluation/evaluation";
import { resultEntry, resultValue } from "../../evaluation/register/register";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";

export interface ProvenanceInput {
  label: string;
  /** the present value for reading; null where it is more than one number */
  value: string | null;
  /** path of the field that sets it; null for a result */
  field: string | null;
}

/** Parts of a design and groups of results that stand among the inputs as a whole. */
const GROUPS: Readonly<Record<string, { label: string; field: string | null }>> = {
  "topLoad.elements": { label: "Bodies of the top load", field: "topLoad.elements" },
  "topLoad.breakoutPoint": { label: "Breakout point", field: "topLoad.breakoutPoint" },
  tuningAim: { label: "What the primary is tuned to", field: "tuningAim" },
  "secondary.profile": { label: "Voltage and current along the winding", field: null },
};

function shown(field: Field, value: unknown, system: UnitSystem): string {
  if (field.kind === "switch") return value ? "on" : "off";
  if (field.kind === "choice") return String(value ?? field.default);
  return formatQuantity(value as number | null, field.dimension, system).text;
}

/** What goes into a result, with its value in the open design. */
export function provenanceInput(
  id: string,
  design: Design,
  evaluation: Evaluation,
  system: UnitSystem,
): ProvenanceInput {
  const group = GROUPS[id];
  if (group) return { ...group, value: null };
  const field = fieldAt(id);
  if (field) return { label: field.label, value: shown(field, valueAt(design, id), system), field: id };
  const entry = resultEntry(id);
  const { text } = formatQuantity(resultValue(evaluation, id), entry.dimension, system);
  return { label: entry.label, value: text, field: null };
}
