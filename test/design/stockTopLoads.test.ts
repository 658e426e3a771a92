import { describe, expect, it } from "vitest";
import { parseDesign } from "../../src/design/design";
import { pierHallLeft } from "../../src/design/examples";
import { STOCK_TOP_LOADS } from "../../src/design/stockTopLoads";

describe("the stock top loads", () => {
  it.each(STOCK_TOP_LOADS)("$name goes into a design", ({ element }) => {
    const topLoad = { ...pierHallLeft.topLoad, elements: [{ ...element, centreHeight: 0.8 }] };
    expect(parseDesign({ ...pierHallLeft, topLoad })).toMatchObject({ ok: true, design: { topLoad } });
  });

  it("have names of their own, and toroids with a hole", () => {
    expect(new Set(STOCK_TOP_LOADS.map(({ name }) => name)).size).toBe(STOCK_TOP_LOADS.length);
    for (const { element, name } of STOCK_TOP_LOADS)
      if (element.shape === "toroid")
        expect(element.outerDiameter, name).toBeGreaterThan(2 * element.tubeDiameter);
  });
});
