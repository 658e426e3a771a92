import type { EvaluationRequest, Evaluator, EvaluatorReply } from "./evaluator";
import { newListeners } from "./listeners";
import { newRequestSlots } from "./requestSlots";

/** What this evaluator needs of a worker. */
export type WorkerLike = Pick<Worker, "postMessage" | "addEventListener" | "terminate">;

/** Deaths in a row, without one answer between, after which a worker is not started again. */
const MAXIMUM_DEATHS = 3;

function deathSentence(restarts: boolean): string {
  return restarts
    ? "The computation stopped unexpectedly and was started again; the figures follow with the next change."
    : "The computation stopped several times and stays stopped. Your design is kept; reload the page to go on.";
}

/**
 * An evaluator over a worker: one request in flight, one waiting, the newest wins. A worker that
 * dies is replaced, and the request that it died of is not sent again.
 */
export function workerEvaluator(startWorker: () => WorkerLike): Evaluator {
  const listeners = newListeners<EvaluatorReply>();
  let worker: WorkerLike | null = null;
  let deaths = 0;
  let sentRevision = 0;

  const slots = newRequestSlots<EvaluationRequest>((request) => {
    sentRevision = request.revision;
    worker?.postMessage(request);
  });
  const answered = (reply: EvaluatorReply) => {
    deaths = 0;
    listeners.tell(reply);
    if (reply.group !== "field") slots.done();
  };
  const died = (dead: WorkerLike) => {
    if (dead !== worker) return;
    dead.terminate();
    deaths += 1;
    const restarts = deaths < MAXIMUM_DEATHS;
    worker = restarts ? start() : null;
    listeners.tell({ group: "failure", revision: sentRevision, sentence: deathSentence(restarts) });
    if (restarts) slots.done();
  };
  const start = (): WorkerLike => {
    const started = startWorker();
    started.addEventListener("message", (event) => {
      if (started === worker) answered((event as MessageEvent<EvaluatorReply>).data);
    });
    started.addEventListener("error", () => died(started));
    started.addEventListener("messageerror", () => died(started));
    return started;
  };
  worker = start();

  return {
    request: (revision, design, mostEnergyTap) => slots.offer({ revision, design, mostEnergyTap }),
    listen: listeners.listen,
    close() {
      worker?.terminate();
      worker = null;
    },
  };
}
