/**
 * A field is declared once; form, schema, units, print row, default and help all derive from it.
 */
import type { Dimension } from "../units/dimension";

export interface NumberField {
  kind: "number";
  /** dotted path in the design; `*` stands for an index, as in `topLoad.elements.*.tubeDiameter` */
  path: string;
  label: string;
  dimension: Dimension;
  /** SI; beyond it a finding, never a refusal */
  range: { minimum: number; maximum: number };
  /** what has no meaning is refused by the schema */
  meaning: "positive" | "zero or more" | "any" | "positive whole" | "zero or more whole";
  /** may be absent: the value is then null */
  nullable: boolean;
  default: number | null;
  /** SI, of an arrow key and of what is dragged; null where the number's own size gives it */
  step: number | null;
  help: {
    /** what it is, one sentence */
    what: string;
    /** how to measure or find it, one sentence */
    measure: string;
    /** typical values in words, with units */
    typical: string;
  };
}

export interface ChoiceField {
  kind: "choice";
  path: string;
  label: string;
  options: readonly string[];
  default: string;
  help: { what: string; measure: string; typical: string };
}

export interface SwitchField {
  kind: "switch";
  path: string;
  label: string;
  default: boolean;
  help: { what: string; measure: string; typical: string };
}

export type Field = NumberField | ChoiceField | SwitchField;
