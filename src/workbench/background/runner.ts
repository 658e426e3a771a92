/** One worker that does one job at a time and is monitored while it does. */
import { patience } from "./patience";
import { isReply, type Order, type Reply } from "./protocol";

/** The part of a worker's interface that is used. */
export type WorkerLike = Pick<Worker, "postMessage" | "addEventListener" | "terminate">;

/** A kind of computation, and its worker. */
export interface Work {
  /** as within a sentence: “the sweep of bursts” */
  what: string;
  startWorker: () => WorkerLike;
}

/** How a job ended without a result: it threw an error, its worker died, or its worker stopped responding. */
export type Failure = "threw" | "not started" | "died" | "silent";

/** Called in order: progress and parts any number of times, then either result or failure. */
export interface Outcome<Result, Part> {
  progress(done: number): void;
  partial(part: Part): void;
  result(result: Result): void;
  failure(failure: Failure): void;
}

export interface Runner<Request, Result, Part> {
  /** Begins a job; none may be in progress. */
  run(request: Request, outcome: Outcome<Result, Part>): void;
  /** Ends worker and job at once; the outcome is not called again. */
  end(): void;
}

/** ms; seconds are counted one by one, so that a sleeping machine or a busy page does not count as silence */
const SECOND = 1000;

/** Makes a runner whose worker starts with its first job and is kept from job to job. */
export function newRunner<Request, Result, Part>({ startWorker }: Work): Runner<Request, Result, Part> {
  let worker: WorkerLike | null = null;
  let running: { id: number; outcome: Outcome<Result, Part> } | null = null;
  let lastId = 0;
  let quietSeconds = 0;
  let watch: ReturnType<typeof setInterval> | undefined;

  const rest = () => {
    clearInterval(watch);
    running = null;
  };
  const end = () => {
    rest();
    worker?.terminate();
    worker = null;
  };
  const fail = (failure: Failure) => {
    const outcome = running?.outcome;
    if (failure === "threw") rest();
    else end();
    outcome?.failure(failure);
  };
  const receive = (message: unknown) => {
    if (!running) return;
    quietSeconds = 0;
    if (!isReply<Result, Part>(message)) fail("died");
    else if (message.id === running.id) handle(message, running.outcome);
  };
  const handle = (reply: Reply<Result, Part>, outcome: Outcome<Result, Part>) => {
    if ("progress" in reply) outcome.progress(reply.progress);
    else if ("partial" in reply) outcome.partial(reply.partial);
    else if ("failure" in reply) fail("threw");
    else {
      rest();
      outcome.result(reply.result);
    }
  };
  const start = (): WorkerLike => {
    const started = startWorker();
    const died = () => {
      if (started === worker) fail("died");
    };
    started.addEventListener("message", (event) => {
      if (started === worker) receive((event as MessageEvent<unknown>).data);
    });
    started.addEventListener("error", died);
    started.addEventListener("messageerror", died);
    return started;
  };
  const checkSilence = () => {
    quietSeconds++;
    if (quietSeconds >= patience()) fail("silent");
  };
  const send = (request: Request) => {
    try {
      worker ??= start();
    } catch {
      fail("not started");
      return;
    }
    try {
      worker.postMessage({ id: lastId, request } satisfies Order<Request>);
    } catch {
      fail("died");
    }
  };

  return {
    run(request, outcome) {
      running = { id: ++lastId, outcome };
      quietSeconds = 0;
      watch = setInterval(checkSilence, SECOND);
      send(request);
    },
    end,
  };
}
