// @vitest-environment node

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sameValue } from "../../../src/workbench/session/history";
import { runs } from "../../properties";

/** A value with the keys of its objects in one order. */
function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return entries.map(([key, part]) => [key, ordered(part)]);
}

const written = (value: unknown) => JSON.stringify([Array.isArray(value), ordered(value)]);

/** Few keys and few leaves, so that two that are drawn are often the same. */
const anyValue = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 3 },
    fc.constantFrom(0, 1, "", "a", null, true),
    fc.array(tie("value"), { maxLength: 2 }),
    fc.dictionary(fc.constantFrom("x", "y"), tie("value"), { maxKeys: 2 }),
  ),
})).value;

describe("two values", () => {
  it("are the same where JSON would write the same, in whatever order keys stand", () => {
    fc.assert(
      fc.property(anyValue, anyValue, (a, b) => {
        expect(sameValue(a, structuredClone(a))).toBe(true);
        expect(sameValue(a, b)).toBe(sameValue(b, a));
        if (sameValue(a, b)) expect(written(a)).toBe(written(b));
      }),
      runs(500, 4),
    );
  });

  it.each([
    [{ a: 1 }, { a: 1, b: null }, false],
    [{ a: 1 }, { a: 1, b: undefined }, true],
    [{ a: 1, b: 2 }, { b: 2, a: 1 }, true],
    [[1, 2], [1, 2, 3], false],
    [[], {}, false],
    [Number.NaN, Number.NaN, true],
    [{ deep: { x: [1, { y: 2 }] } }, { deep: { x: [1, { y: 3 }] } }, false],
  ])("%j and %j: the same %s", (a, b, same) => {
    expect(sameValue(a, b)).toBe(same);
  });
});
