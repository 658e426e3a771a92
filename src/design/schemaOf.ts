/** The schema that follows from a declaration. It refuses wrong shape and what has no meaning, and fills in what was added. */
import * as z from "zod/mini";
import type { Declaration, InputOf, Parts, ValueOf } from "../fields/declaration";
import { defaultValue } from "../fields/defaults";
import type { Meaning } from "../fields/meaning";

// zod would try one `eval` at its first parse, which the page's security policy forbids
z.config({ jitless: true });

type Schema = z.ZodMiniType<unknown, unknown>;
type NumberCheck = z.core.$ZodCheck<number>;

const WHOLE = "must be a whole number";

/**
 * Not `int`, which refuses what is whole and large as if it were broken; `multipleOf` alone, which the published
 * schema tells, takes the smallest numbers for multiples of 1.
 */
const WHOLE_CHECKS: readonly NumberCheck[] = [
  z.multipleOf(1, { error: WHOLE, abort: true }),
  z.refine(Number.isInteger, WHOLE),
];

function leastCheck({ minimum, aboveMinimum }: Meaning): NumberCheck[] {
  if (minimum === Number.NEGATIVE_INFINITY) return [];
  const limit = minimum === 0 ? "zero" : String(minimum);
  return aboveMinimum
    ? [z.gt(minimum, `must be above ${limit}`)]
    : [z.gte(minimum, `must not be below ${limit}`)];
}

function mostCheck({ maximum }: Meaning): NumberCheck[] {
  return maximum === Number.POSITIVE_INFINITY ? [] : [z.lte(maximum, `must be at most ${maximum}`)];
}

function numberSchema(meaning: Meaning): Schema {
  const whole = meaning.whole ? WHOLE_CHECKS : [];
  return z.number().check(...whole, ...leastCheck(meaning), ...mostCheck(meaning));
}

type ShapeOf<Of> = { [Key in keyof Of]: z.ZodMiniType<ValueOf<Of[Key]>, InputOf<Of[Key]>> };

/** The schemas of some parts, by their keys. */
export function shapeOf<Of extends Parts>(parts: Of): ShapeOf<Of>;
export function shapeOf(parts: Parts): Record<string, Schema> {
  return Object.fromEntries(Object.entries(parts).map(([key, part]) => [key, schemaOf(part)]));
}

function variantsSchema(tag: string, variants: Readonly<Record<string, Parts>>): Schema {
  const [first, ...others] = Object.entries(variants).map(([word, parts]) =>
    z.strictObject({ [tag]: z.literal(word), ...shapeOf(parts) }),
  );
  return z.discriminatedUnion(tag, [first, ...others]);
}

function requiredSchema(declaration: Declaration): Schema {
  switch (declaration.kind) {
    case "number":
      return numberSchema(declaration.meaning);
    case "choice":
      return z.enum([...declaration.options]);
    case "switch":
      return z.boolean();
    case "group":
      return z.strictObject(shapeOf(declaration.parts));
    case "list": {
      const { item, least, most } = declaration;
      return z.array(schemaOf(item)).check(...(least > 0 ? [z.minLength(least)] : []), z.maxLength(most));
    }
    case "variants":
      return variantsSchema(declaration.tag, declaration.variants);
  }
}

/** Of what may be none, null beside the value; of what was added, its default where it is absent. */
export function schemaOf<Declared extends Declaration>(
  declaration: Declared,
): z.ZodMiniType<ValueOf<Declared>, InputOf<Declared>>;
export function schemaOf(declaration: Declaration): Schema {
  const required = requiredSchema(declaration);
  const schema = "nullable" in declaration && declaration.nullable ? z.nullable(required) : required;
  if (!declaration.added) return schema;
  return declaration.kind === "group"
    ? z.prefault(schema, {})
    : z._default(schema, defaultValue(declaration));
}
