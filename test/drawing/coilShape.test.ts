import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heightAtTurn, radiusAtTurn } from "../../src/calc/coil/primaryGeometry";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";
import { coilExtent, tapAtPoint, turnSections } from "../../src/drawing/coilShape";
import { fitView, heightOf, radiusOf, xOf, yOf } from "../../src/drawing/view";

describe("the view of the drawing", () => {
  it("shows the whole extent, at one scale, and maps back and forth", () => {
    const extent = coilExtent(pierHallLeft);
    const view = fitView(extent, 600, 500, { side: 80, top: 50, bottom: 50 });
    expect(xOf(view, extent.halfWidth)).toBeLessThanOrEqual(520.001);
    expect(yOf(view, extent.height)).toBeGreaterThanOrEqual(49.999);
    fc.assert(
      fc.property(fc.double({ min: -2, max: 2, noNaN: true }), (length) => {
        expect(radiusOf(view, xOf(view, length))).toBeCloseTo(length, 9);
        expect(heightOf(view, yOf(view, length))).toBeCloseTo(length, 9);
      }),
    );
  });
});

describe("a box smaller than its margins", () => {
  it("still shows the coil the right way up", () => {
    const view = fitView(coilExtent(pierHallLeft), 60, 40, { side: 84, top: 48, bottom: 56 });
    expect(yOf(view, 1)).toBeLessThan(yOf(view, 0));
    expect(xOf(view, 1)).toBeGreaterThan(xOf(view, 0));
  });
});

describe("the primary in section", () => {
  it("has whole turns on the right and half turns on the left, used up to the tap", () => {
    const sections = turnSections({ ...pierHallLeft.primary, turns: 3, tap: 1.6 });
    expect(sections.map(({ turn }) => turn)).toEqual([0, 0.5, 1, 1.5, 2, 2.5, 3]);
    expect(sections.map(({ active }) => active)).toEqual([true, true, true, true, false, false, false]);
    expect(sections.map(({ radius }) => Math.sign(radius))).toEqual([1, -1, 1, -1, 1, -1, 1]);
  });

  it("gives back the tap that stands at a point of its slope", () => {
    for (const { primary } of [pierHallLeft, pierHallRight]) {
      for (const tap of [0.5, 3.3, 7.9]) {
        expect(tapAtPoint(primary, radiusAtTurn(primary, tap), heightAtTurn(primary, tap))).toBeCloseTo(
          tap,
          9,
        );
      }
      expect(tapAtPoint(primary, 9, 0.1)).toBe(primary.turns);
      expect(tapAtPoint(primary, 0, 0.1)).toBe(0.1);
    }
  });
});
