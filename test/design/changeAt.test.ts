import { describe, expect, it } from "vitest";
import { fieldValues, valueAt, withValueAt } from "../../src/design/changeAt";
import { pierHallLeft } from "../../src/design/examples";
import { allFields } from "../../src/fields/allFields";

describe("a value at a path", () => {
  it("is read through indices, and undefined where the path leads nowhere", () => {
    expect(valueAt(pierHallLeft, "topLoad.elements.0.outerDiameter")).toBe(0.46);
    expect(valueAt(pierHallLeft, "topLoad.elements.4.outerDiameter")).toBeUndefined();
    expect(valueAt(pierHallLeft, "secondary.measuredQ.deeper")).toBeUndefined();
  });

  it("is replaced in a copy; the original and everything beside the path stay the same", () => {
    const before = structuredClone(pierHallLeft);
    const changed = withValueAt(pierHallLeft, "topLoad.elements.0.outerDiameter", 0.5);
    expect(changed.topLoad.elements).toEqual([{ ...pierHallLeft.topLoad.elements[0], outerDiameter: 0.5 }]);
    expect(changed.primary).toBe(pierHallLeft.primary);
    expect(changed.topLoad.breakoutPoint).toBe(pierHallLeft.topLoad.breakoutPoint);
    expect(pierHallLeft).toEqual(before);
  });

  it("is not made up inside a part that is absent", () => {
    const bare = withValueAt(pierHallLeft, "primary.strikeRail", null);
    expect(withValueAt(bare, "primary.strikeRail.radius", 0.3)).toEqual(bare);
  });

  it("can be put back at every field's place", () => {
    for (const field of allFields)
      for (const { path, value } of fieldValues(pierHallLeft, field.path))
        expect(withValueAt(pierHallLeft, path, value), path).toEqual(pierHallLeft);
  });
});
