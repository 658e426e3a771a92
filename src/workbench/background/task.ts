/** One background computation, of which only the newest request counts. */
import { createStore, type StoreApi } from "zustand/vanilla";
import { newProgress, type ProgressStore } from "./progress";
import { type Failure, newRunner, type Outcome, type Work } from "./runner";
import type { Report, Trouble } from "./trouble";

export interface Answer<Request, Result> {
  /** the newest; null before the first */
  result: Result | null;
  /** what the result answers */
  request: Request | null;
  /** the newest request; null before the first */
  asked: Request | null;
  /** whether one is being computed */
  computing: boolean;
  /** why the newest request has no result; null if it has one or may still get one */
  trouble: Trouble | null;
}

export interface TaskOptions<Request, Result, Part> extends Work {
  /** ms that a running job may still take when a newer request waits; 0 to replace it at once */
  grace: number;
  report: Report;
  lastEdit: () => string | null;
  /** receives the outcome of requests as they happen */
  listener?: Partial<TaskListener<Request, Result, Part>>;
}

export interface TaskListener<Request, Result, Part> {
  partial(part: Part, request: Request): void;
  result(result: Result, request: Request): void;
  trouble(trouble: Trouble, request: Request): void;
}

export interface Task<Request, Result> {
  answer: StoreApi<Answer<Request, Result>>;
  progress: ProgressStore;
  /** Requests a result; a newer request replaces one that has not begun. */
  ask(request: Request): void;
  /** Cancels the running and the waiting request; the last result stays. */
  cancel(): void;
  /** Requests a result even if the worker was stopped after repeated crashes. */
  insist(request: Request): void;
  close(): void;
}

interface Asked<Request> {
  request: Request;
  lastEdit: string | null;
}

/** Consecutive crashes, without a result in between, after which a worker is not restarted automatically. */
export const MOST_CRASHES = 3;

/** Makes a task; its worker starts with the first request. */
export function newTask<Request, Result, Part = never>(
  options: TaskOptions<Request, Result, Part>,
): Task<Request, Result> {
  const { what, grace, report, lastEdit, listener } = options;
  const answer = createStore<Answer<Request, Result>>(() => ({
    result: null,
    request: null,
    asked: null,
    computing: false,
    trouble: null,
  }));
  const progress = newProgress();
  const runner = newRunner<Request, Result, Part>(options);
  let current: (Asked<Request> & { since: number }) | null = null;
  let waiting: Asked<Request> | null = null;
  let crashes = 0;
  let lastFailure: Failure = "died";
  let overtaking: ReturnType<typeof setTimeout> | undefined;

  const stopped = () => crashes >= MOST_CRASHES;
  const rest = () => {
    clearTimeout(overtaking);
    current = null;
    progress.end();
  };
  const next = () => {
    if (current || !waiting || stopped()) return;
    current = { ...waiting, since: performance.now() };
    waiting = null;
    if (answer.getState().trouble) report(what, null);
    answer.setState({ computing: true, trouble: null });
    progress.begin();
    runner.run(current.request, outcomeOf(current));
  };
  /** After a failure a worker may be faulty although it has not crashed. */
  const renew = () => {
    crashes = 0;
    if (!current && answer.getState().trouble) runner.end();
  };
  const resume = () => {
    renew();
    next();
  };
  const outcomeOf = (asked: Asked<Request>): Outcome<Result, Part> => ({
    progress: progress.tell,
    partial: (part) => listener?.partial?.(part, asked.request),
    result(result) {
      rest();
      crashes = 0;
      answer.setState({ result, request: asked.request, computing: waiting !== null });
      listener?.result?.(result, asked.request);
      next();
    },
    failure(failure) {
      rest();
      lastFailure = failure;
      if (failure !== "threw") crashes++;
      tellTrouble(asked);
      next();
    },
  });
  const tellTrouble = (asked: Asked<Request>) => {
    const again = () => {
      if (!current) waiting ??= asked;
      resume();
    };
    const trouble: Trouble = {
      what,
      failure: lastFailure,
      lastEdit: asked.lastEdit,
      stopped: stopped(),
      again,
      resume,
    };
    answer.setState({ computing: waiting !== null && !trouble.stopped, trouble });
    report(what, trouble);
    listener?.trouble?.(trouble, asked.request);
  };
  const overtake = () => {
    clearTimeout(overtaking);
    if (!current) return;
    const left = current.since + grace - performance.now();
    if (left > 0) {
      overtaking = setTimeout(overtake, left);
      return;
    }
    runner.end();
    current = null;
    next();
  };
  const cancel = () => {
    waiting = null;
    if (!current) return;
    runner.end();
    rest();
    answer.setState({ computing: false });
  };

  const ask = (request: Request) => {
    waiting = { request, lastEdit: lastEdit() };
    answer.setState({ asked: request });
    if (current) overtake();
    else if (stopped()) tellTrouble(waiting);
    else next();
  };

  return {
    answer,
    progress: progress.store,
    ask,
    insist(request) {
      renew();
      ask(request);
    },
    cancel,
    close() {
      cancel();
      runner.end();
    },
  };
}
