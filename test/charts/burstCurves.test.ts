import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { extremes } from "../../src/charts/burstCurves";
import { runs } from "../properties";

describe("a waveform of many samples", () => {
  it("keeps its order, its greatest and its least, in a number that can be drawn", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 1, maxLength: 6000 }),
        (values) => {
          const points = extremes(values.map((y, x) => ({ x, y })));
          const ys = points.map(({ y }) => y);
          expect(points.length).toBeLessThanOrEqual(1600);
          expect(points.every(({ x }, index) => index === 0 || x >= points[index - 1].x)).toBe(true);
          expect([Math.min(...ys), Math.max(...ys)]).toEqual([Math.min(...values), Math.max(...values)]);
        },
      ),
      runs(60, 6),
    );
  });
});
