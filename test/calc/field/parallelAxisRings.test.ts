import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parallelAxisInverseDistance } from "../../../src/calc/field/parallelAxisRings";
import { inverseMeanDistance } from "../../../src/calc/field/ringPotential";

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("the mean potential of a ring on a ring beside it", () => {
  it("is the same where the rings are exchanged", () => {
    fc.assert(
      fc.property(size(0.01, 0.4), size(0.01, 0.4), size(1.1, 9), size(-1, 1), (a, b, times, distance) => {
        const offset = times * (a + b);
        const there = parallelAxisInverseDistance(a, b, offset, distance);
        expect(there / parallelAxisInverseDistance(b, a, offset, distance)).toBeCloseTo(1, 8);
      }),
    );
  });

  it("on one axis is the potential of a ring", () => {
    const expected = inverseMeanDistance(0.2, 0.3, 0.1, 0);
    expect(parallelAxisInverseDistance(0.1, 0.2, 0, 0.3) / expected).toBeCloseTo(1, 12);
  });

  // Coulomb's law, the limit of small rings
  it("far apart is one over the distance", () => {
    expect(parallelAxisInverseDistance(0.1, 0.2, 300, 400) * 500).toBeCloseTo(1, 6);
  });

  // the same by a plain sum over point charges
  it("agrees with charges summed point by point on both rings", () => {
    const [a, b, offset, distance, points] = [0.2, 0.15, 0.5, 0.1, 400];
    let sum = 0;
    for (let i = 0; i < points; i++) {
      for (let j = 0; j < points; j++) {
        const [s, t] = [(2 * Math.PI * i) / points, (2 * Math.PI * j) / points];
        const x = offset + b * Math.cos(t) - a * Math.cos(s);
        sum += 1 / Math.hypot(x, b * Math.sin(t) - a * Math.sin(s), distance);
      }
    }
    expect((parallelAxisInverseDistance(a, b, offset, distance) * points * points) / sum).toBeCloseTo(1, 8);
  });
});
