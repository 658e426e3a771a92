/**
 * The fields that a builder sets, declared once as a tree: type, schema, defaults, form, units, print row and help all
 * follow from here. Values are in SI units; a number's unit is that of its dimension.
 */
import type { Dimension } from "../units/dimension";
import type { Meaning } from "./meaning";

export interface Help {
  /** what it is, one sentence */
  what: string;
  /** how to measure or find it, one sentence */
  measure: string;
  /** typical values in words, with units */
  typical: string;
}

export interface NumberDeclaration<Nullable extends boolean = boolean> {
  kind: "number";
  label: string;
  dimension: Dimension;
  /** SI; a value outside it is a finding, never refused */
  range: { minimum: number; maximum: number };
  meaning: Meaning;
  /** may be left empty: the value is then null */
  nullable: Nullable;
  default: Nullable extends true ? number | null : number;
  /** SI, of an arrow key and of dragging; null where it follows from the number's size */
  step: number | null;
  help: Help;
}

export interface ChoiceDeclaration<Option extends string = string> {
  kind: "choice";
  label: string;
  options: readonly Option[];
  default: Option;
  help: Help;
}

export interface SwitchDeclaration {
  kind: "switch";
  label: string;
  default: boolean;
  help: Help;
}

export type Parts = Readonly<Record<string, Declaration>>;

export interface GroupDeclaration<Of extends Parts = Parts, Nullable extends boolean = boolean> {
  kind: "group";
  parts: Of;
  /** may be absent as a whole: the value is then null */
  nullable: Nullable;
}

export interface ListDeclaration<Item = Declaration> {
  kind: "list";
  item: Item;
  minLength: number;
  maxLength: number;
}

/** Parts of several shapes, distinguished by the value of one key, the tag. */
export interface VariantsDeclaration<
  Tag extends string = string,
  Variants extends Readonly<Record<string, Parts>> = Readonly<Record<string, Parts>>,
> {
  kind: "variants";
  tag: Tag;
  variants: Variants;
  /** the tag as a field of its own; null if it is not edited */
  choice: ChoiceDeclaration | null;
}

export type Declaration = (
  | NumberDeclaration
  | ChoiceDeclaration
  | SwitchDeclaration
  | GroupDeclaration
  | ListDeclaration
  | VariantsDeclaration
) & {
  /** added without a new version of the document: if absent, it takes its default */
  added?: boolean;
};

type Flat<Type> = { [Key in keyof Type]: Type[Key] };

type ValuesOf<Of> = { -readonly [Key in keyof Of]: ValueOf<Of[Key]> };

type VariantValue<Tag extends string, Variants> = {
  [Variant in keyof Variants]: Flat<Record<Tag, Variant> & ValuesOf<Variants[Variant]>>;
}[keyof Variants];

/** The type of a declared value. */
export type ValueOf<Declared> =
  Declared extends NumberDeclaration<infer Nullable>
    ? Nullable extends true
      ? number | null
      : number
    : Declared extends ChoiceDeclaration<infer Option>
      ? Option
      : Declared extends SwitchDeclaration
        ? boolean
        : Declared extends GroupDeclaration<infer Of, infer Nullable>
          ? ValuesOf<Of> | (Nullable extends true ? null : never)
          : Declared extends ListDeclaration<infer Item>
            ? ValueOf<Item>[]
            : Declared extends VariantsDeclaration<infer Tag, infer Variants>
              ? VariantValue<Tag, Variants>
              : never;

/** Keys of parts that may be absent in a document. */
type AddedKey<Of> = { [Key in keyof Of]: Of[Key] extends { added: true } ? Key : never }[keyof Of];

/** The type of a declared value in a document: parts that were added may be left out. */
export type InputOf<Declared> =
  Declared extends GroupDeclaration<infer Of, infer Nullable>
    ?
        | Flat<
            { [Key in Exclude<keyof Of, AddedKey<Of>>]: InputOf<Of[Key]> } & {
              [Key in AddedKey<Of>]?: InputOf<Of[Key]>;
            }
          >
        | (Nullable extends true ? null : never)
    : ValueOf<Declared>;
