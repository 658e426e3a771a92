import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fieldValues, withValueAt } from "../../src/design/changeAt";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";
import { type CoilShape, coilExtent, turnSections } from "../../src/drawing/coilShape";
import { drawnShape, drawnTopLoad } from "../../src/drawing/drawnShape";
import { fitView, xOf, yOf } from "../../src/drawing/view";
import { allFields } from "../../src/fields/allFields";
import { runs } from "../properties";

const SHAPE: CoilShape = pierHallLeft;
const PATHS = allFields
  .filter((field) => field.kind === "number")
  .flatMap((field) => fieldValues(SHAPE, field.path))
  .map(({ path }) => path)
  .filter((path) => /^(secondary|topLoad|primary)\./.test(path));

/** Any number above zero that there is, as many small as large. */
const anySize = fc.double({ min: -320, max: 308, noNaN: true }).map((power) => 10 ** power);

describe("what is drawn of a design", () => {
  it.each([pierHallLeft, pierHallRight])("is the design itself where it can be: $title", (design) => {
    const { shape, notToScale } = drawnShape(design);
    expect(shape).toBe(design);
    expect(notToScale).toEqual([]);
  });

  it("names what is not to scale, and leaves the rest as it is", () => {
    const { shape, notToScale } = drawnShape(withValueAt(SHAPE, "secondary.windingLength", 1e30));
    expect(notToScale).toEqual(["winding length"]);
    expect(shape.secondary.windingLength).toBeLessThan(100);
    expect(shape.secondary.formerDiameter).toBe(SHAPE.secondary.formerDiameter);
    expect(drawnTopLoad(SHAPE.topLoad)).toBe(SHAPE.topLoad);
  });

  it("has a view in which every place is a number that a line can hold, whatever its sizes", () => {
    const changes = fc.array(fc.tuple(fc.constantFrom(...PATHS), anySize), { maxLength: 6 });
    fc.assert(
      fc.property(changes, (changed) => {
        const whole = changed.reduce((shape, [path, value]) => withValueAt(shape, path, value), SHAPE);
        const { shape } = drawnShape(whole);
        const view = fitView(coilExtent(shape), 640, 560, { side: 84, top: 48, bottom: 56 });
        const { secondary, topLoad, primary } = shape;
        const sections = turnSections(primary);
        expect(sections.length).toBeLessThan(200);
        const places = [
          xOf(view, secondary.formerDiameter),
          yOf(view, secondary.baseHeight + secondary.windingLength),
          ...topLoad.elements.map((element) => yOf(view, element.centreHeight)),
          ...sections.flatMap(({ radius, height }) => [xOf(view, radius), yOf(view, height)]),
        ];
        for (const place of places) expect(Math.abs(place)).toBeLessThan(1e9);
      }),
      runs(300, 5),
    );
  });
});
