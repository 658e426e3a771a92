import { describe, expect, it } from "vitest";
import { curvePath, valueAtX } from "../../src/charts/curve";

const same = (value: number): number => value;

describe("a curve", () => {
  it("becomes a path, broken where a point cannot be drawn", () => {
    const points = [
      { x: 0, y: 1 },
      { x: 1, y: 0 },
      { x: 2, y: 3 },
    ];
    expect(curvePath(points, same, same, false)).toBe("M0 1L1 0L2 3");
    expect(curvePath(points, same, same, true)).toBe("M0 1M2 3");
    expect(curvePath([{ x: 1.234, y: -5.678 }], same, same, false)).toBe("M1.2 -5.7");
    expect(curvePath([{ x: 0, y: Number.NaN }], same, same, false)).toBe("");
  });

  it("is read between its points and nowhere else", () => {
    const curve = {
      id: "a",
      label: "",
      colour: "--ink",
      points: [
        { x: 1, y: 10 },
        { x: 3, y: 30 },
      ],
    };
    expect([1, 2, 3, 0.5, 4].map((x) => valueAtX(curve, x))).toEqual([10, 20, 30, null, null]);
  });
});

describe("a curve far out of sight", () => {
  it("is a path of numbers that a path can hold, with gaps where there are none", () => {
    const points = [1e300, -1e300, Number.NaN, Number.POSITIVE_INFINITY, 3].map((y, x) => ({ x, y }));
    const path = curvePath(
      points,
      (x) => 1e300 * x,
      (y) => y,
      false,
    );
    expect(path).not.toMatch(/NaN|Infinity|e\+/);
    expect(path.match(/M/g)).toHaveLength(2);
  });
});
