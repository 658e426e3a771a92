/** The makers of declarations; what was left out takes the usual. */
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

/** What has no meaning at or below zero is the usual case. */
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

export function numberOrNone(
  label: string,
  dimension: Dimension,
  options: NumberOptions<number | null>,
): NumberDeclaration<true> {
  const { default: standard, ...rest } = options;
  return { ...number(label, dimension, { ...rest, default: 0 }), nullable: true, default: standard };
}

/** The first word is the default. */
export function choice<const Word extends string>(
  label: string,
  options: readonly [Word, ...Word[]],
  help: Sentences,
): ChoiceDeclaration<Word> {
  return { kind: "choice", label, options, default: options[0], help: helpOf(help) };
}

export function onOff(label: string, standard: boolean, help: Sentences): SwitchDeclaration {
  return { kind: "switch", label, default: standard, help: helpOf(help) };
}

export function group<Of extends Parts>(parts: Of): GroupDeclaration<Of, false> {
  return { kind: "group", parts, nullable: false };
}

/** A group that may be none. */
export function optional<Of extends Parts>(parts: Of): GroupDeclaration<Of, true> {
  return { kind: "group", parts, nullable: true };
}

export function list<Item>(
  item: Item,
  { least = 0, most }: { least?: number; most: number },
): ListDeclaration<Item> {
  return { kind: "list", item, least, most };
}

/** @param field where the word that tells the variants apart is itself a field; its first word is the default */
export function variants<Tag extends string, Variants extends Readonly<Record<string, Parts>>>(
  tag: Tag,
  shapes: Variants,
  field?: { label: string; help: Sentences },
): VariantsDeclaration<Tag, Variants> {
  const [first, ...others] = Object.keys(shapes);
  const word = field ? choice(field.label, [first, ...others], field.help) : null;
  return { kind: "variants", tag, variants: shapes, choice: word };
}

/** Came within the present version of the document: absent in a file, it takes its default. */
export function added<Declared extends object>(declaration: Declared): Declared & { added: true } {
  return { ...declaration, added: true };
}
