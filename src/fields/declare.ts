/** Functions that make declarations; options that are left out take their usual value. */
import type { Dimension } from "../units/dimension";
import type {
  ChoiceDeclaration,
  GroupDeclaration,
  Help,
  ListDeclaration,
  NumberDeclaration,
  Parts,
  SwitchDeclaration,
  VariantsDeclaration,
} from "./declaration";
import { type Meaning, POSITIVE } from "./meaning";

type Sentences = readonly [what: string, measure: string, typical: string];

interface NumberOptions<Default> {
  range: readonly [minimum: number, maximum: number];
  default: Default;
  help: Sentences;
  meaning?: Meaning;
  step?: number;
}

function helpOf([what, measure, typical]: Sentences): Help {
  return { what, measure, typical };
}

/** A number; unless stated otherwise it must be positive. */
export function number(
  label: string,
  dimension: Dimension,
  { range: [minimum, maximum], help, meaning = POSITIVE, step, ...rest }: NumberOptions<number>,
): NumberDeclaration<false> {
  return {
    kind: "number",
    label,
    dimension,
    range: { minimum, maximum },
    meaning,
    nullable: false,
    default: rest.default,
    step: step ?? null,
    help: helpOf(help),
  };
}

/** A number that may be left empty. */
export function numberOrNone(
  label: string,
  dimension: Dimension,
  options: NumberOptions<number | null>,
): NumberDeclaration<true> {
  const { default: defaultValue, ...rest } = options;
  return { ...number(label, dimension, { ...rest, default: 0 }), nullable: true, default: defaultValue };
}

/** A choice; the first option is the default. */
export function choice<const Option extends string>(
  label: string,
  options: readonly [Option, ...Option[]],
  help: Sentences,
): ChoiceDeclaration<Option> {
  return { kind: "choice", label, options, default: options[0], help: helpOf(help) };
}

export function onOff(label: string, defaultValue: boolean, help: Sentences): SwitchDeclaration {
  return { kind: "switch", label, default: defaultValue, help: helpOf(help) };
}

export function group<Of extends Parts>(parts: Of): GroupDeclaration<Of, false> {
  return { kind: "group", parts, nullable: false };
}

/** A group that may be absent. */
export function optional<Of extends Parts>(parts: Of): GroupDeclaration<Of, true> {
  return { kind: "group", parts, nullable: true };
}

export function list<Item>(
  item: Item,
  { minLength = 0, maxLength }: { minLength?: number; maxLength: number },
): ListDeclaration<Item> {
  return { kind: "list", item, minLength, maxLength };
}

/** @param field given if the tag is itself a field; its first option is the default */
export function variants<Tag extends string, Variants extends Readonly<Record<string, Parts>>>(
  tag: Tag,
  shapes: Variants,
  field?: { label: string; help: Sentences },
): VariantsDeclaration<Tag, Variants> {
  const [first, ...others] = Object.keys(shapes);
  const tagField = field ? choice(field.label, [first, ...others], field.help) : null;
  return { kind: "variants", tag, variants: shapes, choice: tagField };
}

/** Marks a part that was added within the present version of the document: if absent in a file, it takes its default. */
export function added<Declared extends object>(declaration: Declared): Declared & { added: true } {
  return { ...declaration, added: true };
}
