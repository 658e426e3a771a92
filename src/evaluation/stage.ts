/**
 * A stage is a pure function of the parts of the design that it selects and of the results of the
 * stages before it. It is memoised on those parts by value, because object identity is lost on the
 * way into a worker, and on earlier results by identity, because those never leave the thread.
 */
import type { DesignParts } from "../calc/design-parts";

interface Remembered<Result> {
  key: string;
  before: readonly unknown[];
  result: Result;
}

const ENTRIES = 4;

/** Whether two lists of earlier results are the same objects. */
function sameResults(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((entry, index) => entry === b[index]);
}

/**
 * Makes a stage.
 * @param select the parts of the design that the stage reads, and nothing else
 * @param run the computation; receives the parts and the results of the stages before it
 */
export function stage<Parts, Before extends readonly unknown[], Result>(
  select: (design: DesignParts) => Parts,
  run: (parts: Parts, ...before: Before) => Result,
): (design: DesignParts, ...before: Before) => Result {
  const memory: Remembered<Result>[] = [];
  return (design, ...before) => {
    const parts = select(design);
    const key = JSON.stringify(parts);
    const known = memory.findIndex((entry) => entry.key === key && sameResults(entry.before, before));
    const entry = known >= 0 ? memory.splice(known, 1)[0] : { key, before, result: run(parts, ...before) };
    memory.unshift(entry);
    memory.length = Math.min(memory.length, ENTRIES);
    return entry.result;
  };
}
