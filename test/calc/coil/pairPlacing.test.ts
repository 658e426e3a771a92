import { describe, expect, it } from "vitest";
import type { RoundConductor } from "../../../src/calc/coil/conductors";
import { betweenTops, leastSpacing, topLoadGap } from "../../../src/calc/coil/pairPlacing";

function ring(centreRadius: number, sectionRadius: number, centreHeight: number): RoundConductor {
  return { kind: "ring", path: "topLoad.elements.0", centreRadius, sectionRadius, centreHeight };
}

describe("two coils that stand side by side", () => {
  it("are as far apart as the nearest of their top loads' elements", () => {
    const small = ring(0.1, 0.02, 1);
    const large = ring(0.3, 0.1, 1);
    expect(topLoadGap([small, large], [large], 2)).toBeCloseTo(2 - 0.4 - 0.4, 12);
    expect(topLoadGap([small], [large], 2)).toBeCloseTo(2 - 0.12 - 0.4, 12);
    expect(topLoadGap([], [large], 2)).toBe(Number.POSITIVE_INFINITY);
  });

  it("are farther apart where one stands higher", () => {
    // a triangle of sides 3, 4 and 5
    expect(topLoadGap([ring(0.5, 0.1, 4)], [ring(0.5, 0.1, 0)], 4)).toBeCloseTo(5 - 0.2, 12);
  });

  it("meet where their farthest conductors do", () => {
    const at = (radius: number) => ({ radius, height: 0, charge: 1 });
    expect(leastSpacing([at(0.2), at(0.5)], [at(0.4), at(0.1)])).toBeCloseTo(0.9, 12);
  });

  it("have the sum of their voltages between them opposed, the difference in phase", () => {
    expect(betweenTops(300e3, 200e3, -1, 2)).toEqual({ voltageBetween: 500e3, meanField: 250e3 });
    expect(betweenTops(200e3, 300e3, 1, 2)).toEqual({ voltageBetween: 100e3, meanField: 50e3 });
  });
});
