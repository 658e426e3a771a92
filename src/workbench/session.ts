/** The session of this page. */

import { directEvaluator } from "./directEvaluator";
import { newEnergySweeps } from "./energySession";
import type { Evaluator } from "./evaluator";
import { browserStorage } from "./keeping/browserStorage";
import { watchPage } from "./keeping/page";
import { createWorkbench } from "./store";
import { workerEvaluator } from "./workerEvaluator";

function startWorker(): Worker {
  return new Worker(new URL("./evaluation.worker.ts", import.meta.url), { type: "module" });
}

/** An evaluator of its own for one user; where there are no workers the evaluation runs in place. */
export function pageEvaluator(): Evaluator {
  return typeof Worker === "undefined" ? directEvaluator() : workerEvaluator(startWorker);
}

export const session = createWorkbench({
  evaluator: pageEvaluator(),
  storage: browserStorage(),
  now: () => new Date(),
  newId: () => crypto.randomUUID(),
});

function startEnergyWorker(): Worker {
  return new Worker(new URL("./energySweep.worker.ts", import.meta.url), { type: "module" });
}

export const energySweeps = newEnergySweeps(
  session.store,
  typeof Worker === "undefined" ? null : startEnergyWorker,
);

if (typeof window !== "undefined") watchPage(session, window);

export const workbench = session.actions;
