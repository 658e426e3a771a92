import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  innerDomain,
  linearTicks,
  logDomain,
  logTicks,
  roundedDomain,
  roundStep,
} from "../../src/charts/axis";
import { runs } from "../properties";

describe("the axes of the charts", () => {
  it("step by 1, 2 or 5 times a power of ten", () => {
    expect([0.3, 1.2, 2, 4, 7, 30].map(roundStep)).toEqual([0.5, 2, 2, 5, 10, 50]);
  });

  it("have ticks at round numbers within the domain", () => {
    expect(linearTicks({ from: 1, to: 8 }, 8)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(linearTicks({ from: 88_000, to: 181_000 }, 5)).toEqual([
      100_000, 120_000, 140_000, 160_000, 180_000,
    ]);
  });

  it("contain what they are made from, whatever it is", () => {
    const number = fc.integer({ min: -1_000_000, max: 1_000_000 });
    fc.assert(
      fc.property(number, number, (a, b) => {
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        const domain = roundedDomain({ from, to }, 5);
        return (
          domain.from <= from + 1e-6 * Math.abs(from) &&
          domain.to >= to - 1e-6 * Math.abs(to) &&
          domain.to > domain.from
        );
      }),
      runs(100, 4),
    );
  });

  it("are narrowed to round numbers where they should stand still", () => {
    expect(innerDomain({ from: 93_127, to: 198_842 }, 12)).toEqual({ from: 100_000, to: 190_000 });
  });

  it("survive zeros and what is not finite on a log axis", () => {
    expect(logDomain([0, 3, Number.NaN, 400, Number.POSITIVE_INFINITY])).toEqual({ from: 2, to: 500 });
    expect(logDomain([0, 0])).toEqual({ from: 1, to: 10 });
    expect(logTicks({ from: 2, to: 500 })).toEqual([2, 5, 10, 20, 50, 100, 200, 500]);
  });
});

const anyNumber = fc
  .tuple(fc.double({ min: -320, max: 308, noNaN: true }), fc.constantFrom(1, -1, 0))
  .map(([power, sign]) => sign * 10 ** power);

describe("an axis over any two numbers", () => {
  it("has few ticks, each a number of its own, and ends that are numbers", () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, (a, b) => {
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        for (const domain of [{ from, to }, roundedDomain({ from, to }, 5), innerDomain({ from, to }, 5)]) {
          const ticks = linearTicks(domain, 8);
          expect(ticks.length).toBeLessThan(30);
          expect(ticks.every(Number.isFinite)).toBe(true);
          expect(new Set(ticks).size).toBe(ticks.length);
        }
        const { from: low, to: high } = roundedDomain({ from, to }, 5);
        expect(Number.isFinite(low) && high > low).toBe(true);
      }),
      runs(500, 3),
    );
  });

  it("has few ticks on a logarithmic scale too", () => {
    fc.assert(
      fc.property(fc.array(anyNumber, { maxLength: 8 }), (values) => {
        const domain = logDomain(values);
        expect(domain.from).toBeGreaterThan(0);
        expect(domain.to / domain.from).toBeLessThan(1e20);
        expect(logTicks(domain).length).toBeLessThan(30);
        expect(logTicks({ from: 1e-300, to: 1e300 }).length).toBeLessThan(30);
      }),
      runs(300, 3),
    );
  });
});
