import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ringMutualInductance } from "../../../src/calc/field/loops";
import { parallelAxisMutualInductance } from "../../../src/calc/field/parallelAxisLoops";
import { runs } from "../../properties";
import { dipoleMutualInductance } from "./dipoleMutualInductance";
import { loopField } from "./loopField";

const size = fc.double({ min: 1e-3, max: 10, noNaN: true });

describe("mutual inductance of circles", () => {
  it("is the same from either side and scales with size", () => {
    fc.assert(
      fc.property(size, size, size, fc.constantFrom(1e-3, 1e3), (a, b, d, scale) => {
        const mutual = ringMutualInductance(a, b, d);
        expect(ringMutualInductance(b, a, -d) / mutual).toBeCloseTo(1, 12);
        expect(ringMutualInductance(scale * a, scale * b, scale * d) / (scale * mutual)).toBeCloseTo(1, 12);
      }),
    );
  });

  it("keeps its digits for small rings far apart, where the dipole limit holds", () => {
    const limit = (4e-7 * Math.PI * Math.PI * 1e-8 * 1e-8) / (2 * 100 ** 3);
    expect(ringMutualInductance(1e-4, 1e-4, 100) / limit).toBeCloseTo(1, 9);
  });

  it("with parallel axes tends to the coaxial value and, far away, to dipoles", () => {
    expect(
      parallelAxisMutualInductance(0.1, 0.08, 0, 0.05) / ringMutualInductance(0.1, 0.08, 0.05),
    ).toBeCloseTo(1, 11);
    expect(
      parallelAxisMutualInductance(0.1, 0.1, 30, 40) / dipoleMutualInductance(0.1, 0.1, 30, 40),
    ).toBeCloseTo(1, 4);
  });

  it("with parallel axes is the same from either side", () => {
    fc.assert(
      fc.property(size, size, fc.double({ min: 0.01, max: 5, noNaN: true }), (a, b, d) => {
        const one = parallelAxisMutualInductance(a, b, 0.7, d);
        const other = parallelAxisMutualInductance(b, a, 0.7, d);
        expect(Math.abs(one - other)).toBeLessThan(1e-9 * Math.sqrt(a * b) * 1e-6);
      }),
      runs(30),
    );
  });
});

describe("field of a loop", () => {
  it("is Biot and Savart's on the axis", () => {
    const field = { radial: 1, axial: 0 };
    loopField(0.1, 0, 0.05, field);
    expect(field.radial).toBe(0);
    expect(field.axial / ((4e-7 * Math.PI * 0.01) / (2 * 0.0125 ** 1.5))).toBeCloseTo(1, 12);
  });

  it("is the curl of the vector potential", () => {
    const [a, r, z, h] = [0.1, 0.07, 0.03, 1e-5];
    const potential = (radius: number, height: number) =>
      ringMutualInductance(a, radius, height) / (2 * Math.PI * radius);
    const field = { radial: 0, axial: 0 };
    loopField(a, r, z, field);
    expect(field.radial / (-(potential(r, z + h) - potential(r, z - h)) / (2 * h))).toBeCloseTo(1, 6);
    const flux = (radius: number) => radius * potential(radius, z);
    expect(field.axial / ((flux(r + h) - flux(r - h)) / (2 * h * r))).toBeCloseTo(1, 6);
  });

  it("is continuous where the formula near the axis takes over", () => {
    const [inside, outside] = [
      { radial: 0, axial: 0 },
      { radial: 0, axial: 0 },
    ];
    loopField(0.1, 0.99e-5, 0.05, inside);
    loopField(0.1, 2e-5, 0.05, outside);
    expect((outside.radial * 0.99) / (inside.radial * 2)).toBeCloseTo(1, 5);
  });
});
