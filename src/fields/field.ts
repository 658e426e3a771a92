/** A declaration with its path in a document. */
import type { ChoiceDeclaration, Declaration, NumberDeclaration, SwitchDeclaration } from "./declaration";

interface Placed {
  /** dotted path in the document; `*` stands for an index, as in `topLoad.elements.*.tubeDiameter` */
  path: string;
}

export type NumberField = NumberDeclaration & Placed;
export type ChoiceField = ChoiceDeclaration & Placed;
export type SwitchField = SwitchDeclaration & Placed;
export type Field = NumberField | ChoiceField | SwitchField;

/** The declarations of a group's own fields, each with its path. */
export function placed<Of extends Readonly<Record<string, object>>>(
  prefix: string,
  parts: Of,
): { [Key in keyof Of]: Of[Key] & Placed };
export function placed(prefix: string, parts: Readonly<Record<string, object>>) {
  return Object.fromEntries(
    Object.entries(parts).map(([key, part]) => [key, { ...part, path: `${prefix}.${key}` }]),
  );
}

function fieldsOfParts(parts: Readonly<Record<string, Declaration>>, path: string): Field[] {
  return Object.entries(parts).flatMap(([key, part]) => fieldsOf(part, path ? `${path}.${key}` : key));
}

/** Every field of a declaration, in its order; a field of several variants is listed once for each. */
export function fieldsOf(declaration: Declaration, path = ""): Field[] {
  switch (declaration.kind) {
    case "group":
      return fieldsOfParts(declaration.parts, path);
    case "list":
      return fieldsOf(declaration.item, `${path}.*`);
    case "variants": {
      const { choice, tag, variants } = declaration;
      const tagField = choice ? [{ ...choice, path: `${path}.${tag}` }] : [];
      return [...tagField, ...Object.values(variants).flatMap((parts) => fieldsOfParts(parts, path))];
    }
    default:
      return [{ ...declaration, path }];
  }
}
