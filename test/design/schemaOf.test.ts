import { describe, expect, expectTypeOf, it } from "vitest";
import * as z from "zod/mini";
import { schemaOf } from "../../src/design/schemaOf";
import type { InputOf, ValueOf } from "../../src/fields/declaration";
import {
  added,
  choice,
  group,
  list,
  number,
  numberOrNone,
  onOff,
  optional,
  variants,
} from "../../src/fields/declare";
import { between, POSITIVE_WHOLE } from "../../src/fields/meaning";

const help = ["What it is.", "How it is measured.", "What is usual."] as const;
const length = number("Length", "length", { range: [1, 2], default: 1.5, help });
const part = between(0, 1);

const shed = group({
  length,
  doors: number("Doors", "count", { range: [1, 4], default: 1, meaning: POSITIVE_WHOLE, help }),
  height: numberOrNone("Height", "length", { range: [1, 2], default: null, help }),
  roof: choice("Roof", ["flat", "pitched"], help),
  locked: added(onOff("Locked", true, help)),
  share: added(number("Share", "percent", { range: [0, 1], default: 0.5, meaning: part, help })),
  lamp: optional({ power: number("Power", "ratio", { range: [1, 100], default: 60, help }) }),
  tools: list(variants("kind", { saw: { length }, hammer: {} }), { minLength: 1, maxLength: 2 }),
  garden: added(group({ beds: added(number("Beds", "count", { range: [1, 9], default: 3, help })) })),
});

type Shed = ValueOf<typeof shed>;

const schema = schemaOf(shed);

const built: InputOf<typeof shed> = {
  length: 2,
  doors: 1,
  height: null,
  roof: "flat",
  lamp: null,
  tools: [{ kind: "hammer" }],
};

function fault(change: Partial<Record<keyof Shed, unknown>>): string {
  const { error } = schema.safeParse({ ...built, ...change });
  return error ? `${error.issues[0].path.join(".")}: ${error.issues[0].message}` : "none";
}

describe("the type that follows from a declaration", () => {
  it("has each part's own, null where it may be none, and the variants apart", () => {
    expectTypeOf<Shed["length"]>().toEqualTypeOf<number>();
    expectTypeOf<Shed["height"]>().toEqualTypeOf<number | null>();
    expectTypeOf<Shed["roof"]>().toEqualTypeOf<"flat" | "pitched">();
    expectTypeOf<Shed["locked"]>().toEqualTypeOf<boolean>();
    expectTypeOf<Shed["lamp"]>().toEqualTypeOf<{ power: number } | null>();
    expectTypeOf<Shed["tools"]>().toEqualTypeOf<({ kind: "saw"; length: number } | { kind: "hammer" })[]>();
    expectTypeOf<Shed["garden"]>().toEqualTypeOf<{ beds: number }>();
  });
});

describe("the schema that follows from a declaration", () => {
  it("fills in what was added, whole groups too, and nothing else", () => {
    expect(schema.parse(built)).toEqual({ ...built, locked: true, share: 0.5, garden: { beds: 3 } });
    expect(fault({ length: undefined })).toMatch(/^length/);
  });

  it.each([
    [{ length: 0 }, "length: must be above zero"],
    [{ doors: 1.5 }, "doors: must be a whole number"],
    [{ doors: Number.MIN_VALUE }, "doors: must be a whole number"],
    [{ doors: 0 }, "doors: must be above zero"],
    [{ doors: 1e30 }, "none"],
    [{ height: -1 }, "height: must be above zero"],
    [{ height: 1 }, "none"],
    [{ share: -0.1 }, "share: must not be below zero"],
    [{ share: 1.1 }, "share: must be at most 1"],
    [{ share: 1 }, "none"],
  ])("says what is wrong with %o", (change, sentence) => {
    expect(fault(change)).toBe(sentence);
  });

  it.each([
    { colour: "red" },
    { length: Number.POSITIVE_INFINITY },
    { roof: "none" },
    { locked: "yes" },
    { lamp: {} },
    { tools: [] },
    { tools: [1, 2, 3].map(() => ({ kind: "hammer" })) },
    { tools: [{ kind: "saw" }] },
    { tools: [{ kind: "axe" }] },
    { tools: [{ kind: "hammer", length: 1 }] },
    { garden: { beds: -1 } },
  ])("refuses %o", (change) => {
    expect(fault(change)).not.toBe("none");
  });

  it("is published with limits, whole numbers and what is required", () => {
    expect(z.toJSONSchema(schema, { io: "input" })).toMatchObject({
      required: ["length", "doors", "height", "roof", "lamp", "tools"],
      additionalProperties: false,
      properties: {
        length: { type: "number", exclusiveMinimum: 0 },
        doors: { type: "number", multipleOf: 1 },
        share: { minimum: 0, maximum: 1, default: 0.5 },
        roof: { enum: ["flat", "pitched"] },
        tools: { minItems: 1, maxItems: 2 },
      },
    });
  });
});
