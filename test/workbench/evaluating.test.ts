import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fieldAt } from "../../src/design/fields";
import { findingMessage } from "../../src/evaluation/findingMessage";
import { NO_STRESS } from "../../src/evaluation/stages/tankStress";
import type { EvaluationRequest, EvaluatorReply } from "../../src/workbench/evaluator";
import { finiteDrive, finiteField, isFiniteThroughout } from "../../src/workbench/finiteGroups";
import { workerEvaluator } from "../../src/workbench/workerEvaluator";
import { EMPTY_DRIVE, fieldWith, HandWorker, newBench } from "./fakes";

function fieldReply(revision: number): EvaluatorReply {
  return { group: "field", revision, field: fieldWith(revision) };
}

function driveReply(revision: number): EvaluatorReply {
  const { tank } = fieldWith(revision);
  return { group: "drive", revision, drive: { ...EMPTY_DRIVE, tank: tank && { ...NO_STRESS, ...tank } } };
}

describe("the evaluation of a session", () => {
  it("is asked for at the start and at each change of the open design", () => {
    const bench = newBench();
    bench.actions.setValue("primary.tap", 5);
    bench.actions.undo();
    expect(bench.evaluator.requests.map(({ revision }) => revision)).toEqual([1, 2, 3]);
    expect(bench.evaluator.requests[1].design.primary.tap).toBe(5);
  });

  it("is not asked for when only the show changes", () => {
    const bench = newBench();
    bench.actions.editShow("move apart", (show) => ({ ...show, spacing: 7 }));
    bench.actions.renameDesign("right", "Other");
    expect(bench.evaluator.requests).toHaveLength(1);
  });

  it("comes in two groups, and is done with the second", () => {
    const bench = newBench();
    bench.evaluator.tell(fieldReply(1));
    expect(bench.state()).toMatchObject({ fieldRevision: 1, driveRevision: 0, evaluating: true });
    bench.evaluator.tell(driveReply(1));
    expect(bench.state()).toMatchObject({ fieldRevision: 1, driveRevision: 1, evaluating: false });
    expect(bench.state().evaluation.tank?.capacitance).toBe(1);
  });

  it("keeps the bank's stress until the second group brings the new one", () => {
    const bench = newBench();
    const { tank } = fieldWith(1);
    const stressed = { ...EMPTY_DRIVE, tank: tank && { ...NO_STRESS, ...tank, unitPeakVoltage: 800 } };
    bench.evaluator.tell(fieldReply(1));
    bench.evaluator.tell({ group: "drive", revision: 1, drive: stressed });
    bench.actions.setValue("primary.tap", 5);
    bench.evaluator.tell(fieldReply(2));
    expect(bench.state().evaluation.tank).toMatchObject({ capacitance: 2, unitPeakVoltage: 800 });
  });

  it("never goes back, in whatever order the replies come", () => {
    const order = fc.shuffledSubarray([1, 2, 3, 4, 5, 6, 7, 8], { minLength: 1 });
    fc.assert(
      fc.property(order, (revisions) => {
        const bench = newBench();
        for (let tap = 1; tap < 8; tap++) bench.actions.setValue("primary.tap", tap);
        let newest = 0;
        for (const revision of revisions) {
          newest = Math.max(newest, revision);
          bench.evaluator.tell(fieldReply(revision));
          bench.evaluator.tell(driveReply(revision));
          expect(bench.state().evaluation.tank?.capacitance).toBe(newest);
          expect(bench.state()).toMatchObject({ fieldRevision: newest, driveRevision: newest });
        }
      }),
      { numRuns: 50 },
    );
  });

  it("of another design is dropped when that one comes too late", () => {
    const bench = newBench();
    bench.evaluator.tell(fieldReply(1));
    bench.actions.setValue("primary.tap", 5);
    bench.actions.openDesign("right");
    expect(bench.state().evaluation.tank).toBeNull();
    bench.evaluator.tell(fieldReply(2));
    bench.evaluator.tell(driveReply(2));
    expect(bench.state().evaluation.tank).toBeNull();
    bench.evaluator.tell(fieldReply(3));
    expect(bench.state().evaluation.tank?.capacitance).toBe(3);
  });

  it("that fails leaves no old figures, a sentence, and the next one clears it", () => {
    const bench = newBench();
    bench.evaluator.tell(fieldReply(1));
    bench.evaluator.tell({ group: "failure", revision: 1, sentence: "It could not be computed." });
    expect(bench.state()).toMatchObject({ evaluating: false, evaluation: { tank: null } });
    expect(bench.state().notices[0].sentence).toBe("It could not be computed.");
    bench.actions.setValue("primary.tap", 5);
    bench.evaluator.tell(fieldReply(2));
    bench.evaluator.tell(driveReply(2));
    expect(bench.state().notices).toEqual([]);
  });
});

class EvaluationWorker extends HandWorker<EvaluationRequest> {
  answer() {
    const { revision } = this.posted[this.posted.length - 1];
    this.emit("message", fieldReply(revision));
    this.emit("message", driveReply(revision));
  }
}

function newWorkers() {
  const workers: EvaluationWorker[] = [];
  const evaluator = workerEvaluator(() => {
    const worker = new EvaluationWorker();
    workers.push(worker);
    return worker;
  });
  const replies: EvaluatorReply[] = [];
  evaluator.listen((reply) => replies.push(reply));
  const { design } = newBench().evaluator.requests[0];
  return { workers, evaluator, replies, request: (revision: number) => evaluator.request(revision, design) };
}

describe("the evaluator over a worker", () => {
  it("has one request in flight and one waiting, and the newest wins", () => {
    const { workers, request } = newWorkers();
    for (const revision of [1, 2, 3, 4]) request(revision);
    expect(workers[0].posted.map(({ revision }) => revision)).toEqual([1]);
    workers[0].answer();
    expect(workers[0].posted.map(({ revision }) => revision)).toEqual([1, 4]);
    workers[0].answer();
    expect(workers[0].posted).toHaveLength(2);
  });

  it("always ends at the newest request and never has two in flight, in any order of events", () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 60 }), (events) => {
        const { workers, request } = newWorkers();
        const [worker] = workers;
        let revision = 0;
        let answers = 0;
        const answerIfAsked = () => {
          if (worker.posted.length === answers) return;
          answers += 1;
          worker.answer();
        };
        for (const isRequest of events) {
          if (isRequest) request(++revision);
          else answerIfAsked();
          expect(worker.posted.length - answers).toBeLessThanOrEqual(1);
        }
        answerIfAsked();
        answerIfAsked();
        expect(worker.posted.at(-1)?.revision ?? 0).toBe(revision);
        expect(worker.posted).toHaveLength(answers);
      }),
    );
  });

  it("replaces a worker that dies, says so, and goes on with what waits", () => {
    const { workers, request, replies } = newWorkers();
    request(1);
    request(2);
    workers[0].emit("error");
    expect(workers[0].terminated).toBe(true);
    expect(replies).toMatchObject([{ group: "failure", revision: 1 }]);
    expect(workers[1].posted.map(({ revision }) => revision)).toEqual([2]);
    workers[0].emit("message", fieldReply(1));
    expect(replies).toHaveLength(1);
  });

  it("gives up on workers that die again and again", () => {
    const { workers, request, replies } = newWorkers();
    for (let revision = 1; revision < 10; revision++) {
      request(revision);
      workers[workers.length - 1].emit("error");
    }
    expect(workers).toHaveLength(3);
    expect(replies.at(-1)).toMatchObject({ sentence: expect.stringContaining("reload") });
  });
});

describe("the guard against what is not finite", () => {
  it.each(Object.keys({ ...fieldWith(1), ...EMPTY_DRIVE }).filter((name) => name !== "findings"))(
    "has a sentence and a field to look at for the group %s",
    (name) => {
      const broken = { [name]: { number: Number.NaN } };
      const [finding] = finiteDrive({ ...fieldWith(1), ...broken }, { ...EMPTY_DRIVE, ...broken }).findings;
      expect(findingMessage(finding, "metric")).toMatch(/^.+ could not be computed .+\.$/);
      expect(fieldAt(finding.where)).not.toBeNull();
    },
  );
  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "drops a group with %s",
    (value) => {
      const field = finiteField(fieldWith(value));
      expect(field.tank).toBeNull();
      const { findings } = finiteDrive(fieldWith(value), EMPTY_DRIVE);
      expect(findings).toMatchObject([
        { severity: "error", code: "result-not-finite", where: "tank.unit.capacitance", value: null },
      ]);
    },
  );

  it("leaves nothing that is not finite anywhere, and all that is", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (value, limit) => {
        const finding = {
          severity: "note" as const,
          code: "x",
          where: "a",
          quantity: "a",
          value,
          limit,
          remedy: "b",
        };
        const drive = finiteDrive(fieldWith(value), { ...EMPTY_DRIVE, findings: [finding] });
        expect(isFiniteThroughout([finiteField(fieldWith(value)), drive])).toBe(true);
        if (Number.isFinite(value)) expect(finiteField(fieldWith(value))).toEqual(fieldWith(value));
      }),
    );
  });
});
