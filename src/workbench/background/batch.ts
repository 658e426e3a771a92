/** Requests that belong together, computed by a pool. */
import { newProgress, type ProgressStore } from "./progress";
import type { Failure } from "./runner";
import { MOST_CRASHES } from "./task";
import type { Report } from "./trouble";

/** Receives the outcome of each request of a batch, in any order. */
export interface BatchListener<Result, Part> {
  partial?(index: number, part: Part): void;
  result(index: number, result: Result): void;
  failure(index: number, failure: Failure): void;
  /** every request has ended, with a result or a failure */
  done?(): void;
}

export interface Batch<Request, Result, Part> {
  progress: ProgressStore;
  /** Computes all requests; a run in progress is cancelled. */
  run(requests: readonly Request[], listener: BatchListener<Result, Part>): void;
  /** Cancels what is not done; the listener is not called again. */
  cancel(): void;
}

export interface BatchOptions {
  /** as in “the tuning sweep” */
  what: string;
  report: Report;
  lastEdit: () => string | null;
}

/** One call of a batch, as the pool sees it. */
export interface Run<Result, Part> {
  /** cancelled or done */
  over: boolean;
  partial(index: number, part: Part): void;
  result(index: number, result: Result): void;
  failure(index: number, failure: Failure): void;
}

/** How a run ended: the last crash of a worker, and whether it was stopped because of repeated crashes. */
interface End {
  crash: Failure | null;
  stopped: boolean;
}

function newRun<Result, Part>(
  count: number,
  listener: BatchListener<Result, Part>,
  tell: (done: number) => void,
  end: (end: End) => void,
): Run<Result, Part> {
  const waiting = new Set(Array.from({ length: count }, (_, index) => index));
  let crashesInARow = 0;
  let crash: Failure | null = null;
  /** If workers crash repeatedly, waiting for the remaining requests is useless. */
  const proceed = () => {
    if (waiting.size > 0 && crashesInARow < MOST_CRASHES) {
      tell(1 - waiting.size / count);
      return;
    }
    for (const index of waiting) listener.failure(index, crash ?? "died");
    end({ crash, stopped: crashesInARow >= MOST_CRASHES });
  };
  return {
    over: false,
    partial: (index, part) => listener.partial?.(index, part),
    result(index, result) {
      waiting.delete(index);
      crashesInARow = 0;
      listener.result(index, result);
      proceed();
    },
    failure(index, failure) {
      waiting.delete(index);
      if (failure !== "threw") {
        crashesInARow++;
        crash = failure;
      }
      listener.failure(index, failure);
      proceed();
    },
  };
}

/** Makes a batch; `add` queues the requests of a run, `drop` removes them. */
export function newBatch<Request, Result, Part>(
  { what, report, lastEdit }: BatchOptions,
  add: (requests: readonly Request[], run: Run<Result, Part>) => void,
  drop: (run: Run<Result, Part>) => void,
): Batch<Request, Result, Part> {
  const progress = newProgress();
  let current: Run<Result, Part> | null = null;
  const cancel = () => {
    if (!current) return;
    drop(current);
    current = null;
    progress.end();
  };
  const run = (requests: readonly Request[], listener: BatchListener<Result, Part>) => {
    cancel();
    const edit = lastEdit();
    const again = () => run(requests, listener);
    const ended = ({ crash: failure, stopped }: End) => {
      cancel();
      report(what, failure && { what, failure, lastEdit: edit, stopped, again, resume: () => undefined });
      listener.done?.();
    };
    if (requests.length === 0) {
      ended({ crash: null, stopped: false });
      return;
    }
    current = newRun(requests.length, listener, progress.tell, ended);
    progress.begin();
    add(requests, current);
  };
  return { progress: progress.store, run, cancel };
}
