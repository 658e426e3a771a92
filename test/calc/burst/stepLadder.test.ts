import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  climb,
  lowestStep,
  type SquareMatrix,
  seriesRoom,
  stepLadder,
  travel,
} from "../../../src/calc/burst/stepLadder";
import { runs } from "../../properties";

function matrix(...rows: number[][]): SquareMatrix {
  return { size: rows.length, entries: Float64Array.from(rows.flat()) };
}

function stepped(system: SquareMatrix, step: number, rung: number, x: number[]): Float64Array {
  const out = new Float64Array(system.size);
  climb(stepLadder(system, step), rung, Float64Array.from(x), out);
  return out;
}

describe("a ladder of exact steps", () => {
  // closed forms: a rotation, a decay, a pair of equal roots
  it("turns an undamped oscillation by the angle", () => {
    const [cosine, sine] = stepped(matrix([0, 1], [-1, 0]), 0.7, 0, [1, 0]);
    expect(cosine).toBeCloseTo(Math.cos(0.7), 13);
    expect(sine).toBeCloseTo(-Math.sin(0.7), 13);
  });

  it("lets decays as slow as 1 /s and as fast as 10¹² /s go on beside each other", () => {
    const system = matrix([-1, 0, 0], [0, -1e12, 0], [0, 0, -1e6]);
    const [slow, fast, middle] = stepped(system, 1e-6, 0, [1, 1, 1]);
    expect(slow).toBeCloseTo(Math.exp(-1e-6), 14);
    expect(fast).toBeCloseTo(0, 14);
    expect(middle).toBeCloseTo(Math.exp(-1), 13);
  });

  it("does not need distinct roots", () => {
    const [first, second] = stepped(matrix([-2, 1], [0, -2]), 0.5, 0, [0, 1]);
    expect(first).toBeCloseTo(0.5 * Math.exp(-1), 13);
    expect(second).toBeCloseTo(Math.exp(-1), 13);
  });

  it("halves the step from rung to rung", () => {
    const system = matrix([0, 1], [-1, 0]);
    expect(stepped(system, 0.7, 1, [1, 0])[0]).toBeCloseTo(Math.cos(0.35), 13);
    const { rungs } = stepLadder(system, 0.7);
    const lowest = lowestStep({ system, step: 0.7, rungs });
    expect(stepped(system, 0.7, rungs.length - 1, [1, 0])[1] / -Math.sin(lowest)).toBeCloseTo(1, 13);
  });

  it("moves a state on by any time below the longest step", () => {
    const ladder = stepLadder(matrix([0, 1], [-1, 0]), 0.7);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.7, noNaN: true }), (time) => {
        const x = new Float64Array(2);
        travel(ladder, time, Float64Array.of(1, 0), x, seriesRoom(2));
        expect(x[0]).toBeCloseTo(Math.cos(time), 13);
        expect(x[1]).toBeCloseTo(-Math.sin(time), 13);
      }),
      runs(100, 20240517),
    );
  });

  it("needs few rungs however unlike the units are", () => {
    expect(stepLadder(matrix([0, 1e11], [-1e-11, 0]), 0.7).rungs.length).toBe(
      stepLadder(matrix([0, 1], [-1, 0]), 0.7).rungs.length,
    );
  });
});
