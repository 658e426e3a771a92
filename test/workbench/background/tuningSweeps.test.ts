import { describe, expect, it, vi } from "vitest";
import { pierHallLeft } from "../../../src/design/examples";
import type { DriveEvaluation, FieldEvaluation } from "../../../src/evaluation/evaluation";
import type { EvaluationRequest } from "../../../src/workbench/background/evaluationJob";
import { newPool } from "../../../src/workbench/background/pool";
import type { WorkerLike } from "../../../src/workbench/background/runner";
import { SWEEPS } from "../../../src/workbench/background/sweepVariables";
import { evaluateSweep, type Sweep } from "../../../src/workbench/background/tuningSweeps";
import { startEvaluation } from "../../../src/workbench/background/workers";
import { EMPTY_DRIVE, fieldWith, newHands } from "../fakes";

const OF_NOBODY = { what: "the sweep", report: () => undefined, lastEdit: () => null };

function newBatch(startWorker: () => WorkerLike, size = 1) {
  const work = { what: "an evaluation", startWorker };
  return newPool<EvaluationRequest, DriveEvaluation, FieldEvaluation>(work, size).batch(OF_NOBODY);
}

describe("a tuning sweep", () => {
  it("asks for designs each with another value and all else the same, a worker one at a time", () => {
    const { workers, start } = newHands<EvaluationRequest>();
    const values = SWEEPS.bank.values(pierHallLeft);
    let told: Sweep | null = null;
    evaluateSweep(newBatch(start), pierHallLeft, "bank", (sweep) => {
      told = sweep;
    });
    for (const [index, value] of values.entries()) {
      expect(workers[0].posted).toHaveLength(index + 1);
      const { design } = workers[0].posted[index];
      expect(SWEEPS.bank.present(design)).toBeCloseTo(value, 18);
      expect(design.secondary).toEqual(pierHallLeft.secondary);
      workers[0].answer({ partial: fieldWith(1) });
      workers[0].answer({ result: EMPTY_DRIVE });
    }
    expect(workers).toHaveLength(1);
    expect(values.length).toBeLessThanOrEqual(24);
    expect(told).toEqual({ points: [], failed: 0 });
  });

  it("goes on after a failure and counts it, and tells nothing once it was given up", () => {
    const { workers, start } = newHands<EvaluationRequest>();
    const batch = newBatch(start);
    const tell = vi.fn();
    evaluateSweep(batch, pierHallLeft, "spark", tell);
    workers[0].answer({ failure: true });
    expect(workers[0].posted).toHaveLength(2);
    batch.cancel();
    workers[0].answer({ failure: true });
    expect(workers[0].posted).toHaveLength(2);
    expect(tell).not.toHaveBeenCalled();
  });

  it("finds the primary falling with the bank's capacitance as Thomson's formula says", () => {
    let told: Sweep = { points: [], failed: 0 };
    evaluateSweep(newBatch(startEvaluation), pierHallLeft, "bank", (sweep) => {
      told = sweep;
    });
    expect(told.points.length).toBeGreaterThan(10);
    const constants = told.points.map(({ x, primaryResonance }) => x * primaryResonance ** 2);
    for (const constant of constants) expect(constant / constants[0]).toBeCloseTo(1, 9);
  });
});
