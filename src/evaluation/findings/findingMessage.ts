import { fieldAt } from "../../fields/allFields";
import type { Dimension } from "../../units/dimension";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";
import { resultEntry } from "../register/register";
import type { Finding } from "./finding";

/** Label and dimension of a quantity, which is either a field of the design or a result. */
function described(quantity: string): { label: string; dimension: Dimension } {
  const field = fieldAt(quantity);
  if (!field) return resultEntry(quantity);
  return { label: field.label, dimension: field.kind === "number" ? field.dimension : "ratio" };
}

/** A label within a sentence: in lower case unless it is an abbreviation. */
function within(label: string): string {
  return /^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The sentence of a finding in the user's units, followed by the remedy. */
export function findingMessage(finding: Finding, system: UnitSystem): string {
  const { sentence } = finding;
  const { label, dimension } = described(finding.quantity);
  const filled = sentence
    .replace("{field}", sentence.startsWith("{field}") ? label : within(label))
    .replace("{value}", formatQuantity(finding.value, dimension, system).text)
    .replace("{ends}", (finding.value ?? 0) < (finding.limit ?? 0) ? "begins" : "ends")
    .replace("{limit}", formatQuantity(finding.limit, dimension, system).text);
  return finding.remedy ? `${filled} ${capitalised(finding.remedy)}.` : filled;
}
