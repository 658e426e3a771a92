import { describe, expect, it } from "vitest";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { evaluate } from "../../../src/evaluation/evaluate";
import { RESULTS, resultEntry, resultValue } from "../../../src/evaluation/register/register";
import { sourceText } from "../../../src/evaluation/register/sourceText";
import { allFields, fieldAt } from "../../../src/fields/allFields";

/** Dotted paths of the numbers in a value, indices as `*`. */
function numericPaths(value: unknown, path = ""): string[] {
  if (typeof value === "number") return [path];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, part]) => {
    const name = Array.isArray(value) ? "*" : key;
    return numericPaths(part, path ? `${path}.${name}` : name);
  });
}

const EVALUATIONS = [pierHallLeft, pierHallRight].map((design) => {
  const { findings: _, ...results } = evaluate(design);
  return results;
});
const PRINTED = [...new Set(EVALUATIONS.flatMap((evaluation) => numericPaths(evaluation)))];
const IDS = new Set(RESULTS.map(({ id }) => id));

function isField(path: string): boolean {
  return fieldAt(path) !== null || allFields.some((field) => field.path.startsWith(`${path}.`));
}

function isResult(id: string): boolean {
  return IDS.has(id) || RESULTS.some((entry) => entry.id.startsWith(`${id}.`));
}

describe("the register of results", () => {
  it.each(PRINTED)("explains %s", (path) => {
    expect(IDS).toContain(path);
  });

  it("names each result once", () => {
    expect(IDS.size).toBe(RESULTS.length);
  });

  it.each(RESULTS.map((entry) => [entry.id, entry] as const))(
    "says of %s what goes in, and leaves nothing empty",
    (_, entry) => {
      for (const input of entry.inputs) expect(isField(input) || isResult(input), input).toBe(true);
      const { label, symbol, words, formula, source, validity, accuracy } = entry;
      for (const text of [label, symbol, words, formula, sourceText(source), validity, accuracy])
        expect(text.trim()).not.toBe("");
    },
  );

  it("holds no result that no evaluation prints", () => {
    const optional = RESULTS.filter(({ id }) => !PRINTED.includes(id)).map(({ id }) => id);
    for (const id of optional)
      expect(id).toMatch(
        /^(topLoad\.breakoutVoltageAtPoint|tuning\.suggestedTapBand|tank\.arrangements\.\*\.cost|burst\.limitTrips)/,
      );
  });

  it("finds an entry and a value by an index", () => {
    expect(resultEntry("secondary.overtones.0").id).toBe("secondary.overtones.*");
    expect(resultValue(EVALUATIONS[0], "secondary.overtones.0")).toBeGreaterThan(0);
  });

  it("refuses a name that is no result", () => {
    expect(() => resultEntry("secondary.colour")).toThrow("secondary.colour");
  });

  it("has no value where a group is missing", () => {
    expect(resultValue({ secondary: null }, "secondary.inductance")).toBeNull();
    expect(resultValue({ tank: { units: Number.NaN } }, "tank.units")).toBeNull();
  });
});
