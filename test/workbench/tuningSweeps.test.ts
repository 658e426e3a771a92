import { describe, expect, it } from "vitest";
import { pierHallLeft } from "../../src/design/examples";
import { directEvaluator } from "../../src/workbench/directEvaluator";
import { SWEEPS } from "../../src/workbench/sweepVariables";
import { evaluateSweep, type SweepPoint } from "../../src/workbench/tuningSweeps";
import { EMPTY_DRIVE, fieldWith, HandEvaluator } from "./fakes";

describe("a sweep of the tuning", () => {
  it("asks for one design at a time, each with another value and all else the same", () => {
    const evaluator = new HandEvaluator();
    const values = SWEEPS.bank.values(pierHallLeft);
    let told: readonly SweepPoint[] | null = null;
    evaluateSweep(evaluator, pierHallLeft, "bank", (points) => {
      told = points;
    });
    for (const [index, value] of values.entries()) {
      expect(evaluator.requests).toHaveLength(index + 1);
      const { revision, design } = evaluator.requests[index];
      expect(SWEEPS.bank.present(design)).toBeCloseTo(value, 18);
      expect(design.secondary).toEqual(pierHallLeft.secondary);
      evaluator.tell({ group: "field", revision, field: fieldWith(1) });
      evaluator.tell({ group: "drive", revision, drive: EMPTY_DRIVE });
    }
    expect(values.length).toBeLessThanOrEqual(24);
    expect(told).toEqual([]);
  });

  it("goes on after a failure, and no further once a newer one has taken its place", () => {
    const evaluator = new HandEvaluator();
    const end = evaluateSweep(evaluator, pierHallLeft, "spark", () => undefined);
    evaluator.tell({ group: "failure", revision: evaluator.requests[0].revision, sentence: "no" });
    expect(evaluator.requests).toHaveLength(2);
    end();
    evaluator.tell({ group: "failure", revision: evaluator.requests[1].revision, sentence: "no" });
    expect(evaluator.requests).toHaveLength(2);
  });

  it("finds the primary falling with the bank's capacitance as Thomson's formula says", () => {
    let told: readonly SweepPoint[] = [];
    evaluateSweep(directEvaluator(), pierHallLeft, "bank", (points) => {
      told = points;
    });
    const constants = told.map(({ x, primaryResonance }) => x * primaryResonance ** 2);
    for (const constant of constants) expect(constant / constants[0]).toBeCloseTo(1, 9);
  });
});
