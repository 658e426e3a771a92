import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ringElectrode, sheetElectrode, sphereElectrode } from "../../../src/calc/field/electrode";
import { influenceMatrix } from "../../../src/calc/field/influenceMatrix";
import { openLogarithmWeights, periodicLogarithmWeights } from "../../../src/calc/field/logarithmWeights";
import { inverseMeanDistance } from "../../../src/calc/field/ringPotential";
import { factorise, substitute } from "../../../src/calc/linear/elimination";
import { runs } from "../../properties";

const size = fc.double({ min: 0.01, max: 10, noNaN: true });

describe("the potential of a ring", () => {
  it("on the axis is that of its charge at one distance (Smythe)", () => {
    fc.assert(
      fc.property(size, size, (radius, height) => {
        expect(inverseMeanDistance(0, height, radius, 0) * Math.hypot(radius, height)).toBeCloseTo(1, 12);
      }),
      runs(100, 1),
    );
  });

  it("is the same from ring to ring and back", () => {
    fc.assert(
      fc.property(size, size, size, (a, b, height) => {
        expect(inverseMeanDistance(a, height, b, 0)).toBe(inverseMeanDistance(b, 0, a, height));
      }),
      runs(100, 2),
    );
  });

  it("in the ring's plane is K(m) from a table: K(0.5) = 1.854074677301372 (Abramowitz & Stegun, 17.1)", () => {
    // m = 4ab/(a+b)² = ½ for b/a = 3 − 2√2 … so that (a−b)² = ½(a+b)²
    const b = 3 - 2 * Math.SQRT2;
    const expected = (2 / Math.PI) * 1.854074677301372;
    expect(inverseMeanDistance(1, 0, b, 0) * (1 + b)).toBeCloseTo(expected, 12);
  });

  it("grows without bound at the ring, and is never negative or NaN", () => {
    expect(inverseMeanDistance(1, 0, 1, 0)).toBeGreaterThan(10);
    expect(Number.isNaN(inverseMeanDistance(0, 0, 1, 0))).toBe(false);
  });
});

describe("the logarithm's weights", () => {
  it.each([8, 24])(
    "integrate it over a closed curve of %s nodes: ∫ln(4 sin²(s/2))·cos(ms) ds = −2π/m (Kress)",
    (count) => {
      const weights = periodicLogarithmWeights(count);
      for (const m of [1, 2, 3]) {
        const sum = weights.reduce(
          (total, weight, j) => total + weight * Math.cos((2 * Math.PI * m * j) / count),
          0,
        );
        expect(sum).toBeCloseTo((-2 * Math.PI) / m, 10);
      }
      expect(weights.reduce((total, weight) => total + weight, 0)).toBeCloseTo(0, 10);
    },
  );

  it.each([8, 24])(
    "integrate it over an open curve of %s nodes: −2π ln 2 for 1, −(2π/n)·cos nt else",
    (count) => {
      const weights = openLogarithmWeights(count);
      const t = (i: number) => ((i + 0.5) * Math.PI) / count;
      for (const n of [0, 1, 3]) {
        for (let i = 0; i < count; i++) {
          let sum = 0;
          for (let j = 0; j < count; j++) sum += weights[i * count + j] * Math.cos(n * t(j));
          const exact = n === 0 ? -2 * Math.PI * Math.LN2 : ((-2 * Math.PI) / n) * Math.cos(n * t(i));
          expect(sum).toBeCloseTo(exact, 9);
        }
      }
    },
  );
});

describe("the influence matrix", () => {
  const electrodes = [
    sheetElectrode(0.06, 0.1, 0.5, 16),
    ringElectrode(0.17, 0.05, 0.75, 12),
    sphereElectrode(0.1, 1.1, 12),
  ];

  it.each([null, { ceilingHeight: null }, { ceilingHeight: 2 }])(
    "is symmetric under mirrors %o",
    (mirrors) => {
      const matrix = influenceMatrix(electrodes, mirrors);
      const count = Math.sqrt(matrix.length);
      expect(count).toBe(40);
      for (let i = 0; i < count; i++)
        for (let j = 0; j < i; j++) expect(matrix[i * count + j]).toBe(matrix[j * count + i]);
    },
  );

  it("sums a ceiling's images to their limit: 3 and 60 of them agree, up to close below the ceiling", () => {
    for (const ceilingHeight of [4, 1.25]) {
      const few = influenceMatrix(electrodes, { ceilingHeight });
      const many = influenceMatrix(electrodes, { ceilingHeight, ceilingImages: 60 });
      few.forEach((value, i) => {
        expect(Math.abs(value - many[i])).toBeLessThan(2e-3 * many[0]);
      });
    }
  });

  it("leaves no potential on a ring that all but lies in the ground plane", () => {
    const low = ringElectrode(1, 1e-6, 1.0001e-6, 8);
    const high = ringElectrode(1, 0.01, 1, 8);
    const matrix = influenceMatrix([high, low], { ceilingHeight: null });
    expect(Math.abs(matrix[8]) / matrix[0]).toBeLessThan(1e-5);
  });
});

describe("elimination in rows' order", () => {
  it("solves, and its leading part solves the leading unknowns alone", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 36, maxLength: 36 }),
        (values) => {
          const matrix = Float64Array.from(values, (value, i) => (i % 7 === 0 ? 8 + value : value));
          const factors = matrix.slice();
          expect(factorise(factors, 6)).toBe(true);
          for (const leading of [6, 4]) {
            const solution = Float64Array.from({ length: leading }, (_, i) => i + 1);
            substitute(factors, 6, leading, solution, 1);
            for (let i = 0; i < leading; i++) {
              let sum = 0;
              for (let j = 0; j < leading; j++) sum += matrix[i * 6 + j] * solution[j];
              expect(sum).toBeCloseTo(i + 1, 9);
            }
          }
        },
      ),
      runs(100, 3),
    );
  });

  it("refuses a matrix that is singular or not finite", () => {
    expect(factorise(new Float64Array(4), 2)).toBe(false);
    expect(factorise(Float64Array.of(Number.NaN, 0, 0, 1), 2)).toBe(false);
  });
});
