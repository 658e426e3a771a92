/** The declared defaults, and completing values with them. */
import type { Declaration, InputOf, Parts, ValueOf } from "./declaration";

function standardParts(parts: Parts): Record<string, unknown> {
  return Object.fromEntries(Object.entries(parts).map(([key, part]) => [key, defaultValue(part)]));
}

/** The default of a declaration; for variants that of the first. */
export function defaultValue<Declared extends Declaration>(declaration: Declared): ValueOf<Declared>;
export function defaultValue(declaration: Declaration): unknown {
  switch (declaration.kind) {
    case "group":
      return standardParts(declaration.parts);
    case "list":
      return Array.from({ length: declaration.minLength }, () => defaultValue(declaration.item));
    case "variants": {
      const [[variant, parts]] = Object.entries(declaration.variants);
      return { [declaration.tag]: variant, ...standardParts(parts) };
    }
    default:
      return declaration.default;
  }
}

function valueWithDefaults(declaration: Declaration, value: unknown): unknown {
  if (value === undefined) return defaultValue(declaration);
  if (declaration.kind !== "group" || value === null || typeof value !== "object") return value;
  const given = new Map<string, unknown>(Object.entries(value));
  return Object.fromEntries(
    Object.entries(declaration.parts).map(([key, part]) => [key, valueWithDefaults(part, given.get(key))]),
  );
}

/** A value with its parts in the declared order; parts that were left out get their defaults. */
export function withDefaults<Declared extends Declaration>(
  declaration: Declared,
  value: InputOf<Declared>,
): ValueOf<Declared>;
export function withDefaults(declaration: Declaration, value: unknown): unknown {
  return valueWithDefaults(declaration, value);
}
