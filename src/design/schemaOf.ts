/** Makes the schema of a declaration. It refuses wrong types and invalid values, and fills in the defaults of added parts. */
import * as z from "zod/mini";
import type { Declaration, InputOf, Parts, ValueOf } from "../fields/declaration";
import { defaultValue } from "../fields/defaults";
import type { Meaning } from "../fields/meaning";

// zod would try `eval` at its first parse, which the page's security policy forbids
z.config({ jitless: true });

type Schema = z.ZodMiniType<unknown, unknown>;
type NumberCheck = z.core.$ZodCheck<number>;

const WHOLE = "must be a whole number";

/**
 * Not `int`, which refuses large whole numbers; and not `multipleOf` alone, which the published schema shows, because it
 * accepts the smallest fractions as multiples of 1.
 */
const WHOLE_CHECKS: readonly NumberCheck[] = [
  z.multipleOf(1, { error: WHOLE, abort: true }),
  z.refine(Number.isInteger, WHOLE),
];

function minimumCheck({ minimum, aboveMinimum }: Meaning): NumberCheck[] {
  if (minimum === Number.NEGATIVE_INFINITY) return [];
  const limit = minimum === 0 ? "zero" : String(minimum);
  return aboveMinimum
    ? [z.gt(minimum, `must be above ${limit}`)]
    : [z.gte(minimum, `must not be below ${limit}`)];
}

function maximumCheck({ maximum }: Meaning): NumberCheck[] {
  return maximum === Number.POSITIVE_INFINITY ? [] : [z.lte(maximum, `must be at most ${maximum}`)];
}

function numberSchema(meaning: Meaning): Schema {
  const whole = meaning.whole ? WHOLE_CHECKS : [];
  return z.number().check(...whole, ...minimumCheck(meaning), ...maximumCheck(meaning));
}

type ShapeOf<Of> = { [Key in keyof Of]: z.ZodMiniType<ValueOf<Of[Key]>, InputOf<Of[Key]>> };

/** The schemas of parts, by their keys. */
export function shapeOf<Of extends Parts>(parts: Of): ShapeOf<Of>;
export function shapeOf(parts: Parts): Record<string, Schema> {
  return Object.fromEntries(Object.entries(parts).map(([key, part]) => [key, schemaOf(part)]));
}

function variantsSchema(tag: string, variants: Readonly<Record<string, Parts>>): Schema {
  const [first, ...others] = Object.entries(variants).map(([variant, parts]) =>
    z.strictObject({ [tag]: z.literal(variant), ...shapeOf(parts) }),
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
      const { item, minLength, maxLength } = declaration;
      const minimum = minLength > 0 ? [z.minLength(minLength)] : [];
      return z.array(schemaOf(item)).check(...minimum, z.maxLength(maxLength));
    }
    case "variants":
      return variantsSchema(declaration.tag, declaration.variants);
  }
}

/** A nullable part takes null as well; an added part takes its default if it is absent. */
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
