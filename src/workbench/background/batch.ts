/** Requests that belong together, computed by a pool. */
import { newProgress, type ProgressStore } from "./progress";
import type { Failure } from "./runner";
import { MOST_DEATHS } from "./task";
import type { Report } from "./trouble";

/** Hears what becomes of each request of a batch, in whatever order they end. */
export interface BatchListener<Result, Part> {
  partial?(index: number, part: Part): void;
  result(index: number, result: Result): void;
  failure(index: number, failure: Failure): void;
  /** every request has ended, one way or the other */
  done?(): void;
}

export interface Batch<Request, Result, Part> {
  progress: ProgressStore;
  /** Computes all; what is under way gives way. */
  run(requests: readonly Request[], listener: BatchListener<Result, Part>): void;
  /** Gives up what is not done; nothing more is told of it. */
  cancel(): void;
}

export interface BatchOptions {
  /** as in “the sweep of the tuning” */
  what: string;
  report: Report;
  lastEdit: () => string | null;
}

/** What a pool tells of one call of a batch. */
export interface Run<Result, Part> {
  /** nobody waits for it any longer */
  over: boolean;
  partial(index: number, part: Part): void;
  result(index: number, result: Result): void;
  failure(index: number, failure: Failure): void;
}

/** How a run ended: whether workers died of it, and whether it was stopped because they did again and again. */
interface End {
  death: Failure | null;
  stopped: boolean;
}

function newRun<Result, Part>(
  count: number,
  listener: BatchListener<Result, Part>,
  tell: (done: number) => void,
  end: (end: End) => void,
): Run<Result, Part> {
  const waiting = new Set(Array.from({ length: count }, (_, index) => index));
  let deathsInARow = 0;
  let death: Failure | null = null;
  /** Workers that die again and again would have every request waited for in vain. */
  const goOn = () => {
    if (waiting.size > 0 && deathsInARow < MOST_DEATHS) {
      tell(1 - waiting.size / count);
      return;
    }
    for (const index of waiting) listener.failure(index, death ?? "died");
    end({ death, stopped: deathsInARow >= MOST_DEATHS });
  };
  return {
    over: false,
    partial: (index, part) => listener.partial?.(index, part),
    result(index, result) {
      waiting.delete(index);
      deathsInARow = 0;
      listener.result(index, result);
      goOn();
    },
    failure(index, failure) {
      waiting.delete(index);
      if (failure !== "threw") {
        deathsInARow++;
        death = failure;
      }
      listener.failure(index, failure);
      goOn();
    },
  };
}

/** Makes a batch; `add` has the requests of a run computed, `drop` ends that. */
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
    const ended = ({ death: failure, stopped }: End) => {
      cancel();
      report(what, failure && { what, failure, lastEdit: edit, stopped, again, resume: () => undefined });
      listener.done?.();
    };
    if (requests.length === 0) {
      ended({ death: null, stopped: false });
      return;
    }
    current = newRun(requests.length, listener, progress.tell, ended);
    progress.begin();
    add(requests, current);
  };
  return { progress: progress.store, run, cancel };
}
