import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { newTask } from "../../../src/workbench/background/task";
import type { Trouble } from "../../../src/workbench/background/trouble";
import { inPlace } from "../../inPlaceWorker";
import { newHands } from "../fakes";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function double(request: number): number {
  if (request < 0) throw new RangeError("engine words");
  return 2 * request;
}

function newDoubling(grace = Number.POSITIVE_INFINITY, answersItself = false) {
  const hands = newHands<number>();
  const reports: (Trouble | null)[] = [];
  const results: number[] = [];
  const task = newTask<number, number>({
    what: "the doubling",
    startWorker: answersItself ? () => inPlace(double) : hands.start,
    grace,
    report: (_, trouble) => reports.push(trouble),
    lastEdit: () => "change turns",
    listener: { result: (result) => results.push(result) },
  });
  return { ...hands, task, reports, results, answer: task.answer.getState, progress: task.progress.getState };
}

describe("a task", () => {
  it("starts no worker before it is asked", () => {
    expect(newDoubling().workers).toEqual([]);
  });

  it("answers with the newest result and what it belongs to", () => {
    const { task, last, answer } = newDoubling();
    task.ask(3);
    expect(answer()).toMatchObject({ computing: true, asked: 3, result: null });
    last().answer({ result: 6 });
    expect(answer()).toEqual({ result: 6, request: 3, asked: 3, computing: false, trouble: null });
  });

  it("lets the one under way end where there is grace, and the newest wins", () => {
    const { task, workers, results } = newDoubling();
    for (const request of [1, 2, 3]) task.ask(request);
    workers[0].answer({ result: 2 });
    workers[0].answer({ result: 6 });
    expect(results).toEqual([2, 6]);
    expect(workers[0].posted).toEqual([1, 3]);
  });

  it("ends the one under way at once where there is none, and a late answer of it is not heard", () => {
    const { task, workers, results } = newDoubling(0);
    task.ask(1);
    task.ask(2);
    expect(workers.map(({ terminated }) => terminated)).toEqual([true, false]);
    workers[0].emit("message", { id: 1, result: 2 });
    expect(results).toEqual([]);
    workers[1].answer({ result: 4 });
    expect(results).toEqual([4]);
  });

  it("ends one that outlasts its grace while another waits", () => {
    const { task, workers, answer } = newDoubling(2000);
    task.ask(1);
    vi.advanceTimersByTime(1500);
    task.ask(2);
    vi.advanceTimersByTime(499);
    expect(workers).toHaveLength(1);
    vi.advanceTimersByTime(1);
    expect(workers[0].terminated).toBe(true);
    expect(workers[1].posted).toEqual([2]);
    expect(answer().trouble).toBeNull();
  });

  it("gives up at once when it is cancelled, and keeps the last result", () => {
    const { task, last, workers, answer, results } = newDoubling();
    task.ask(1);
    last().answer({ result: 2 });
    task.ask(5);
    task.ask(6);
    task.cancel();
    expect(workers[0].terminated).toBe(true);
    expect(answer()).toMatchObject({ computing: false, result: 2, request: 1 });
    workers[0].emit("message", { id: 2, result: 10 });
    expect(results).toEqual([2]);
    task.ask(7);
    expect(last().posted).toEqual([7]);
  });

  it("takes an answer that is there at once, and survives what a job throws", () => {
    const { task, answer, reports } = newDoubling(0, true);
    task.ask(4);
    expect(answer()).toMatchObject({ result: 8, computing: false });
    task.ask(-1);
    expect(answer()).toMatchObject({ result: 8, request: 4, computing: false });
    expect(reports.at(-1)).toMatchObject({ failure: "threw", lastEdit: "change turns" });
    task.ask(5);
    expect(answer()).toMatchObject({ result: 10, trouble: null });
  });
});

describe("the watch over a task", () => {
  it("ends a worker that gives no sign of life for ten seconds, and names the edit", () => {
    const { task, workers, reports, answer } = newDoubling();
    task.ask(1);
    vi.advanceTimersByTime(9000);
    expect(workers[0].terminated).toBe(false);
    vi.advanceTimersByTime(1000);
    expect(workers[0].terminated).toBe(true);
    expect(reports).toMatchObject([
      { what: "the doubling", failure: "silent", lastEdit: "change turns", stopped: false },
    ]);
    expect(answer().computing).toBe(false);
    task.ask(2);
    expect(workers[1].posted).toEqual([2]);
  });

  it("takes each word about progress as a sign of life", () => {
    const { task, last, reports } = newDoubling();
    task.ask(1);
    for (let second = 0; second < 60; second += 9) {
      vi.advanceTimersByTime(9000);
      last().answer({ progress: second / 60 });
    }
    expect(reports).toEqual([]);
    vi.advanceTimersByTime(10_000);
    expect(reports).toHaveLength(1);
  });

  it("does not take a machine that slept for a silent worker", () => {
    const { task, workers } = newDoubling();
    task.ask(1);
    vi.advanceTimersByTime(5000);
    vi.setSystemTime(Date.now() + 8 * 3600 * 1000);
    vi.advanceTimersByTime(4000);
    expect(workers[0].terminated).toBe(false);
  });

  it.each([
    ["an error", (worker: ReturnType<ReturnType<typeof newDoubling>["last"]>) => worker.emit("error")],
    ["a message that cannot be read", (worker) => worker.emit("messageerror")],
    ["a message that is no reply", (worker) => worker.emit("message", "rubbish")],
    ["an object without an id", (worker) => worker.emit("message", { result: 1 })],
    ["nothing for an answer", (worker) => worker.emit("message", null)],
  ])("takes %s for the worker's death", (_, die) => {
    const { task, last, workers, reports } = newDoubling();
    task.ask(1);
    die(last());
    expect(workers[0].terminated).toBe(true);
    expect(reports).toMatchObject([{ failure: "died" }]);
    task.ask(2);
    expect(last().posted).toEqual([2]);
  });

  it("says so where a worker cannot even be started", () => {
    const reports: (Trouble | null)[] = [];
    const task = newTask<number, number>({
      what: "the doubling",
      startWorker: () => {
        throw new DOMException("refused", "SecurityError");
      },
      grace: 0,
      report: (_, trouble) => reports.push(trouble),
      lastEdit: () => null,
    });
    task.ask(1);
    expect(reports).toMatchObject([{ failure: "not started", stopped: false }]);
  });

  it("stops after three deaths in a row, says so at each request, and starts again when asked", () => {
    const { task, last, workers, reports, results } = newDoubling();
    for (const request of [1, 2, 3]) {
      task.ask(request);
      last().emit("error");
    }
    expect(reports.flatMap((trouble) => trouble?.stopped ?? [])).toEqual([false, false, true]);
    task.ask(4);
    expect(workers).toHaveLength(3);
    expect(reports.at(-1)).toMatchObject({ stopped: true });
    reports.at(-1)?.again();
    expect(last().posted).toEqual([4]);
    last().answer({ result: 8 });
    expect(results).toEqual([8]);
    expect(reports.at(-1)).toBeNull();
  });

  it("computes again on another worker, because the old one may be out of order", () => {
    const { task, workers, reports, answer } = newDoubling();
    task.ask(1);
    workers[0].answer({ failure: true });
    expect(workers[0].terminated).toBe(false);
    reports[0]?.again();
    expect(workers[0].terminated).toBe(true);
    expect(workers[1].posted).toEqual([1]);
    workers[1].answer({ result: 2 });
    expect(answer()).toMatchObject({ result: 2, trouble: null });
    task.insist(3);
    expect(workers[1].posted).toEqual([1, 3]);
  });

  it("takes its word back as soon as the next request begins", () => {
    const { task, last, reports } = newDoubling();
    task.ask(1);
    last().emit("error");
    task.ask(2);
    expect(reports).toMatchObject([{ failure: "died" }, null]);
  });

  it("counts deaths anew after each result, and what a job throws is no death", () => {
    const { task, last, reports } = newDoubling();
    for (let round = 0; round < 4; round++) {
      task.ask(1);
      last().emit("error");
      task.ask(1);
      last().answer({ failure: true });
      task.ask(1);
      last().emit("error");
      task.ask(1);
      last().answer({ result: 2 });
    }
    expect(reports.some((trouble) => trouble?.stopped)).toBe(false);
  });
});

describe("the progress of a task", () => {
  it("is shown after half a second, not before", () => {
    const { task, progress, last } = newDoubling();
    task.ask(1);
    last().answer({ progress: 0.25 });
    vi.advanceTimersByTime(499);
    expect(progress().shown).toBe(false);
    vi.advanceTimersByTime(1);
    expect(progress()).toEqual({ shown: true, done: 0.25 });
    last().answer({ result: 2 });
    expect(progress()).toEqual({ shown: false, done: null });
  });

  it("is told ten times a second at most", () => {
    const { task, last } = newDoubling();
    task.ask(1);
    vi.advanceTimersByTime(500);
    let told = 0;
    task.progress.subscribe(() => told++);
    for (let step = 0; step < 1000; step++) {
      vi.advanceTimersByTime(1);
      last().answer({ progress: step / 1000 });
    }
    expect(told).toBeGreaterThan(5);
    expect(told).toBeLessThanOrEqual(11);
  });

  it("does not appear for many short jobs one after the other", () => {
    const { task, last, progress } = newDoubling();
    task.ask(0);
    for (let step = 1; step < 100; step++) {
      task.ask(step);
      vi.advanceTimersByTime(20);
      last().answer({ result: step });
      expect(progress().shown).toBe(false);
    }
  });
});
