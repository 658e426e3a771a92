import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { BatchListener } from "../../../src/workbench/background/batch";
import { newPool } from "../../../src/workbench/background/pool";
import type { Trouble } from "../../../src/workbench/background/trouble";
import { inPlace } from "../../inPlaceWorker";
import { newHands } from "../fakes";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function square(request: number): number {
  if (request < 0) throw new RangeError("no");
  return request * request;
}

function newSquares(size: number, answersItself = false) {
  const hands = newHands<number>();
  const reports: (Trouble | null)[] = [];
  const work = {
    what: "a square",
    startWorker: answersItself ? () => inPlace(square) : hands.start,
  };
  const pool = newPool<number, number>(work, size);
  const newBatch = (what: string) =>
    pool.batch({ what, report: (_, trouble) => reports.push(trouble), lastEdit: () => "change turns" });
  return { ...hands, newBatch, batch: newBatch("the squares"), reports };
}

/** Notes what is told, a word each. */
function newNotes() {
  const notes: string[] = [];
  const listener: BatchListener<number, never> = {
    result: (index, result) => notes.push(`${index}: ${result}`),
    failure: (index, failure) => notes.push(`${index}: ${failure}`),
    done: () => notes.push("done"),
  };
  return { notes, listener };
}

describe("a pool", () => {
  it("has as many under way as it has workers, and hands on what waits", () => {
    const { workers, batch } = newSquares(2);
    const { notes, listener } = newNotes();
    batch.run([1, 2, 3, 4, 5], listener);
    expect(workers.map(({ posted }) => posted)).toEqual([[1], [2]]);
    workers[1].answer({ result: 4 });
    workers[1].answer({ result: 9 });
    workers[0].answer({ result: 1 });
    expect(workers.map(({ posted }) => posted)).toEqual([
      [1, 5],
      [2, 3, 4],
    ]);
    workers[0].answer({ result: 25 });
    workers[1].answer({ result: 16 });
    expect(notes).toEqual(["1: 4", "2: 9", "0: 1", "4: 25", "3: 16", "done"]);
  });

  it("takes thousands of answers that are there at once without nesting", () => {
    const { batch } = newSquares(1, true);
    const { notes, listener } = newNotes();
    batch.run(
      Array.from({ length: 20_000 }, (_, index) => index),
      listener,
    );
    expect(notes).toHaveLength(20_001);
    expect(notes[150]).toBe("150: 22500");
  });

  it("is done at once with nothing to do", () => {
    const { notes, listener } = newNotes();
    newSquares(1).batch.run([], listener);
    expect(notes).toEqual(["done"]);
  });

  it("tells which ones failed and goes on with the others", () => {
    const { batch } = newSquares(1, true);
    const { notes, listener } = newNotes();
    batch.run([1, -1, 3], listener);
    expect(notes).toEqual(["0: 1", "1: threw", "2: 9", "done"]);
  });

  it("does not wait for one that never answers", () => {
    const { batch, last, reports } = newSquares(1);
    const { notes, listener } = newNotes();
    batch.run([1, 2, 3], listener);
    last().answer({ result: 1 });
    vi.advanceTimersByTime(10_000);
    last().answer({ result: 9 });
    expect(notes).toEqual(["0: 1", "1: silent", "2: 9", "done"]);
    expect(reports).toMatchObject([{ failure: "silent", stopped: false, lastEdit: "change turns" }]);
  });

  it("stops after three deaths in a row and computes again when asked", () => {
    const { batch, last, workers, reports } = newSquares(1);
    const { notes, listener } = newNotes();
    batch.run([1, 2, 3, 4, 5], listener);
    for (let death = 0; death < 3; death++) last().emit("error");
    expect(workers).toHaveLength(3);
    expect(notes).toEqual(["0: died", "1: died", "2: died", "3: died", "4: died", "done"]);
    expect(reports).toMatchObject([{ failure: "died", stopped: true }]);
    reports[0]?.again();
    for (const result of [1, 4, 9, 16, 25]) last().answer({ result });
    expect(notes.at(-1)).toBe("done");
    expect(reports.at(-1)).toBeNull();
  });

  it("tells nothing more of a batch that is cancelled, and ends what of it does not end by itself", () => {
    const { batch, newBatch, workers } = newSquares(1);
    const { notes, listener } = newNotes();
    batch.run([1, 2], listener);
    batch.cancel();
    const other = newNotes();
    newBatch("others").run([7], other.listener);
    vi.advanceTimersByTime(3000);
    expect(workers[0].terminated).toBe(true);
    expect(workers[1].posted).toEqual([7]);
    workers[1].answer({ result: 49 });
    expect(notes).toEqual([]);
    expect(other.notes).toEqual(["0: 49", "done"]);
  });

  it("keeps the worker of a cancelled batch that comes to its end", () => {
    const { batch, workers } = newSquares(1);
    const { notes, listener } = newNotes();
    batch.run([1, 2], listener);
    batch.run([3], listener);
    workers[0].answer({ result: 1 });
    vi.advanceTimersByTime(3000);
    expect(workers).toHaveLength(1);
    expect(workers[0].posted).toEqual([1, 3]);
    workers[0].answer({ result: 9 });
    expect(notes).toEqual(["0: 9", "done"]);
  });

  it("shows progress after half a second", () => {
    const { batch, workers } = newSquares(1);
    batch.run([1, 2, 3, 4], newNotes().listener);
    workers[0].answer({ result: 1 });
    vi.advanceTimersByTime(500);
    expect(batch.progress.getState()).toEqual({ shown: true, done: 0.25 });
    batch.cancel();
    expect(batch.progress.getState().shown).toBe(false);
  });
});
