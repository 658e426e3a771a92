/** What stands where nothing was said: the declared defaults. */
import type { Declaration, InputOf, Parts, ValueOf } from "./declaration";

function standardParts(parts: Parts): Record<string, unknown> {
  return Object.fromEntries(Object.entries(parts).map(([key, part]) => [key, standardValue(part)]));
}

/** The default of whatever is declared; of variants the first. */
export function standardValue<Declared extends Declaration>(declaration: Declared): ValueOf<Declared>;
export function standardValue(declaration: Declaration): unknown {
  switch (declaration.kind) {
    case "group":
      return standardParts(declaration.parts);
    case "list":
      return Array.from({ length: declaration.least }, () => standardValue(declaration.item));
    case "variants": {
      const [[word, parts]] = Object.entries(declaration.variants);
      return { [declaration.tag]: word, ...standardParts(parts) };
    }
    default:
      return declaration.default;
  }
}

function completedValue(declaration: Declaration, value: unknown): unknown {
  if (value === undefined) return standardValue(declaration);
  if (declaration.kind !== "group" || value === null || typeof value !== "object") return value;
  const given = new Map<string, unknown>(Object.entries(value));
  return Object.fromEntries(
    Object.entries(declaration.parts).map(([key, part]) => [key, completedValue(part, given.get(key))]),
  );
}

/** A value with its parts in the declared order, and at their defaults where they were left out. */
export function completed<Declared extends Declaration>(
  declaration: Declared,
  value: InputOf<Declared>,
): ValueOf<Declared>;
export function completed(declaration: Declaration, value: unknown): unknown {
  return completedValue(declaration, value);
}
