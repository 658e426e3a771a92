import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { EvaluationRequest } from "../../../src/workbench/background/evaluationJob";
import type { EvaluatorReply } from "../../../src/workbench/background/evaluator";
import { taskEvaluator } from "../../../src/workbench/background/taskEvaluator";
import { startEvaluation } from "../../../src/workbench/background/workers";
import { EMPTY_DRIVE, fieldWith, type HandWorker, newBench, newHands } from "../fakes";

type Asked = EvaluationRequest & { revision: number };

function answer(worker: HandWorker<Asked>) {
  worker.answer({ partial: fieldWith(worker.posted.at(-1)?.revision ?? 0) });
  worker.answer({ result: EMPTY_DRIVE });
}

function newWorkers() {
  const { workers, start } = newHands<Asked>();
  const evaluator = taskEvaluator(start);
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
    answer(workers[0]);
    expect(workers[0].posted.map(({ revision }) => revision)).toEqual([1, 4]);
    answer(workers[0]);
    expect(workers[0].posted).toHaveLength(2);
  });

  it("hands over both groups with the revision that they belong to", () => {
    const { workers, request, replies } = newWorkers();
    request(7);
    answer(workers[0]);
    expect(replies).toMatchObject([
      { group: "field", revision: 7 },
      { group: "drive", revision: 7 },
    ]);
  });

  it("always ends at the newest request and never has two in flight, in any order of events", () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 60 }), (events) => {
        const { workers, request } = newWorkers();
        const posted = () => workers[0]?.posted ?? [];
        let revision = 0;
        let answers = 0;
        const answerIfAsked = () => {
          if (posted().length === answers) return;
          answers += 1;
          answer(workers[0]);
        };
        for (const isRequest of events) {
          if (isRequest) request(++revision);
          else answerIfAsked();
          expect(posted().length - answers).toBeLessThanOrEqual(1);
        }
        answerIfAsked();
        answerIfAsked();
        expect(posted().at(-1)?.revision ?? 0).toBe(revision);
        expect(posted()).toHaveLength(answers);
      }),
    );
  });

  it("replaces a worker that dies, says so, and goes on with what waits", () => {
    const { workers, request, replies } = newWorkers();
    request(1);
    request(2);
    workers[0].emit("error");
    expect(workers[0].terminated).toBe(true);
    expect(replies).toMatchObject([{ group: "failure", revision: 1, trouble: { failure: "died" } }]);
    expect(workers[1].posted.map(({ revision }) => revision)).toEqual([2]);
    workers[0].emit("message", { id: 1, partial: fieldWith(1) });
    expect(replies).toHaveLength(1);
  });

  it("gives up on workers that die again and again, until it is asked to start again", () => {
    const { workers, request, replies } = newWorkers();
    for (let revision = 1; revision < 10; revision++) {
      request(revision);
      workers[workers.length - 1].emit("error");
    }
    expect(workers).toHaveLength(3);
    const last = replies[replies.length - 1];
    expect(last).toMatchObject({ group: "failure", revision: 9, trouble: { stopped: true } });
    if (last.group === "failure") last.trouble.resume();
    expect(workers).toHaveLength(4);
    expect(workers[3].posted.map(({ revision }) => revision)).toEqual([9]);
  });

  it("says that it was cancelled", () => {
    const { workers, request, replies, evaluator } = newWorkers();
    request(1);
    evaluator.cancel();
    expect(workers[0].terminated).toBe(true);
    expect(replies).toMatchObject([{ group: "failure", revision: 1, trouble: { failure: "cancelled" } }]);
  });

  it("tells the field group before the drive group", () => {
    const replies: EvaluatorReply[] = [];
    const evaluator = taskEvaluator(startEvaluation);
    evaluator.listen((reply) => replies.push(reply));
    evaluator.request(1, newBench().open());
    expect(replies.map(({ group }) => group)).toEqual(["field", "drive"]);
  });
});
