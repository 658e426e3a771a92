import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withValueAt } from "../../../src/design/changeAt";
import { parseDesign } from "../../../src/design/design";
import { pierHallLeft } from "../../../src/design/examples";
import { allFields, numberField } from "../../../src/fields/allFields";
import { meaningRefusal } from "../../../src/panels/parts/meaning";

describe("a number that can be no value of its field", () => {
  it("is refused with field, value and remedy", () => {
    expect(meaningRefusal(numberField("secondary.turns"), 0, "metric")).toBe(
      "Turns must be above zero, but it is 0\u202fturns: change the value.",
    );
    expect(meaningRefusal(numberField("tank.unitsInSeries"), 2.5, "metric")).toMatch(/whole number/);
  });

  it("is the same in the field as in the document's schema", () => {
    const paths = allFields
      .filter(({ kind, path }) => kind === "number" && !path.includes("*") && !path.startsWith("tuningAim"))
      .map(({ path }) => path);
    const value = fc.oneof(
      fc.integer({ min: -3, max: 3 }),
      fc.double({ noNaN: true, min: -5, max: 5 }),
      fc.constantFrom(Number.MIN_VALUE, -Number.MIN_VALUE, 1e-300, 1e22),
    );
    fc.assert(
      fc.property(fc.constantFrom(...paths), value, (path, number) => {
        const accepted = meaningRefusal(numberField(path), number, "metric") === null;
        expect(parseDesign(withValueAt(pierHallLeft, path, number)).ok).toBe(accepted);
      }),
    );
  });
});
