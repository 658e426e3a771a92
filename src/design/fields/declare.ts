import type { Dimension } from "../../units/dimension";
import type { ChoiceField, NumberField, SwitchField } from "../field";

type Help = readonly [what: string, measure: string, typical: string];

interface NumberOptions {
  range: readonly [minimum: number, maximum: number];
  default: number | null;
  help: Help;
  meaning?: NumberField["meaning"];
  nullable?: boolean;
  step?: number;
}

function helpOf([what, measure, typical]: Help): NumberField["help"] {
  return { what, measure, typical };
}

/** Declares a number; what has no meaning at or below zero is the usual case. */
export function number(
  path: string,
  label: string,
  dimension: Dimension,
  options: NumberOptions,
): NumberField {
  return {
    kind: "number",
    path,
    label,
    dimension,
    range: { minimum: options.range[0], maximum: options.range[1] },
    meaning: options.meaning ?? "positive",
    nullable: options.nullable ?? false,
    default: options.default,
    step: options.step ?? null,
    help: helpOf(options.help),
  };
}

export function choice(path: string, label: string, options: readonly string[], help: Help): ChoiceField {
  return { kind: "choice", path, label, options, default: options[0], help: helpOf(help) };
}

export function onOff(path: string, label: string, standard: boolean, help: Help): SwitchField {
  return { kind: "switch", path, label, default: standard, help: helpOf(help) };
}
