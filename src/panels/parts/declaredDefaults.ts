import { numberField } from "../../design/fields";

/**
 * A part to begin with: each of its fields at its declared default.
 * @param path of the part in the design, with `*` for an index
 */
export function declaredDefaults(path: string, fields: readonly string[]): Record<string, number> {
  return Object.fromEntries(
    fields.map((name) => {
      const field = numberField(`${path}.${name}`);
      return [name, field.default ?? field.range.minimum];
    }),
  );
}
