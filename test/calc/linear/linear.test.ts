import fc from "fast-check";
import { Matrix, solve } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { choleskyFactor, choleskySolve } from "../../../src/calc/linear/cholesky";
import {
  add,
  type Complex,
  complex,
  divide,
  magnitude,
  multiply,
  scale,
  square,
  squareRoot,
  subtract,
} from "../../../src/calc/linear/complex";
import { factorise, substitute } from "../../../src/calc/linear/elimination";
import { hermite, hermiteWeights } from "../../../src/calc/linear/hermite";

const number = fc.double({ min: -1e3, max: 1e3, noNaN: true }).filter((x) => x === 0 || Math.abs(x) > 1e-3);
const anyComplex = fc.tuple(number, number).map(([re, im]) => complex(re, im));
const nonZero = anyComplex.filter((a) => magnitude(a) > 1e-3);

function expectClose(a: Complex, b: Complex, size: number) {
  expect(magnitude(subtract(a, b))).toBeLessThanOrEqual(1e-12 * Math.max(size, 1e-12));
}

describe("complex numbers", () => {
  it("multiply as (3 + 2j)(1 + 7j) = −11 + 23j, and divide back", () => {
    expect(multiply(complex(3, 2), complex(1, 7))).toEqual(complex(-11, 23));
    expect(divide(complex(-11, 23), complex(1, 7))).toEqual(complex(3, 2));
  });

  it("have the root 2 + j of 3 + 4j, and 1 + 2j of −3 + 4j", () => {
    expect(squareRoot(complex(3, 4))).toEqual(complex(2, 1));
    expect(squareRoot(complex(-3, 4))).toEqual(complex(1, 2));
    expect(squareRoot(complex(-4, 0))).toEqual(complex(0, 2));
    expect(squareRoot(complex(0, 0))).toEqual(complex(0, 0));
  });

  it("square to what they were the root of, with a real part that is not negative", () => {
    fc.assert(
      fc.property(anyComplex, (a) => {
        const root = squareRoot(a);
        expect(root.re).toBeGreaterThanOrEqual(0);
        expectClose(square(root), a, magnitude(a));
      }),
    );
  });

  it("divide as they multiply, and scale as they add", () => {
    fc.assert(
      fc.property(anyComplex, nonZero, (a, b) => {
        expectClose(multiply(divide(a, b), b), a, magnitude(a));
        expectClose(scale(a, 3), add(a, add(a, a)), 3 * magnitude(a));
      }),
    );
  });
});

const SIZE = 6;
const entries = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), {
  minLength: SIZE * SIZE,
  maxLength: SIZE * SIZE,
});
const sides = fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: SIZE, maxLength: SIZE });

/** Against the general solver of ml-matrix 6.15. */
function expectSolved(matrix: readonly number[], side: readonly number[], found: Float64Array) {
  const rows = Array.from({ length: SIZE }, (_, row) => matrix.slice(row * SIZE, (row + 1) * SIZE));
  const known = solve(new Matrix(rows), Matrix.columnVector([...side])).to1DArray();
  known.forEach((value, at) => {
    expect(found[at]).toBeCloseTo(value, 9);
  });
}

describe("systems of linear equations", () => {
  it("are solved by elimination where the diagonal dominates", () => {
    fc.assert(
      fc.property(entries, sides, (random, side) => {
        const matrix = random.map((value, at) => value + (at % (SIZE + 1) === 0 ? 2 * SIZE : 0));
        const factors = Float64Array.from(matrix);
        const found = Float64Array.from(side);
        expect(factorise(factors, SIZE)).toBe(true);
        substitute(factors, SIZE, SIZE, found, 1);
        expectSolved(matrix, side, found);
      }),
    );
  });

  it("are solved by Cholesky's factor where the matrix is symmetric and positive definite", () => {
    fc.assert(
      fc.property(entries, sides, (random, side) => {
        const at = (row: number, column: number) => random[row * SIZE + column];
        // BᵀB + 1 is positive definite whatever B is
        const matrix = Array.from({ length: SIZE * SIZE }, (_, place) => {
          const [row, column] = [Math.floor(place / SIZE), place % SIZE];
          const product = Array.from({ length: SIZE }, (_, k) => at(k, row) * at(k, column));
          return product.reduce((sum, each) => sum + each, row === column ? 1 : 0);
        });
        const factor = choleskyFactor(Float64Array.from(matrix), SIZE);
        const found = Float64Array.from(side);
        if (!factor) throw new Error("not positive definite");
        choleskySolve(factor, SIZE, found);
        expectSolved(matrix, side, found);
      }),
    );
  });

  it("are refused where a pivot vanishes or the matrix is not positive definite", () => {
    expect(factorise(Float64Array.from([0, 1, 1, 0]), 2)).toBe(false);
    expect(factorise(Float64Array.from([1, 1, 1, Number.NaN]), 2)).toBe(false);
    expect(choleskyFactor(Float64Array.from([1, 2, 2, 1]), 2)).toBeNull();
    expect(choleskyFactor(Float64Array.from([1, 0, 0, Number.POSITIVE_INFINITY]), 2)).toBeNull();
  });
});

describe("the cubic of Hermite", () => {
  it("is every cubic that it is given the ends and slopes of", () => {
    fc.assert(
      fc.property(
        fc.array(number, { minLength: 4, maxLength: 4 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (c, t) => {
          const value = (x: number) => c[0] + x * (c[1] + x * (c[2] + x * c[3]));
          const slope = (x: number) => c[1] + x * (2 * c[2] + x * 3 * c[3]);
          const { start, end, startSlope, endSlope } = hermiteWeights(t);
          const read = start * value(0) + end * value(1) + startSlope * slope(0) + endSlope * slope(1);
          expect(read).toBeCloseTo(value(t), 8);
          expect(hermite(value(0), value(1), slope(0), slope(1), t)).toBeCloseTo(value(t), 8);
        },
      ),
    );
  });
});
