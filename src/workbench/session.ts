/** The session of this page. */
import { newEnergySweeps } from "./background/energySession";
import { taskEvaluator } from "./background/taskEvaluator";
import { startEnergySweep, startEvaluation } from "./background/workers";
import { browserStorage } from "./keeping/browserStorage";
import { watchPage } from "./keeping/page";
import { createWorkbench } from "./store";

/** The evaluation of the open design. */
export const evaluator = taskEvaluator(startEvaluation);

export const session = createWorkbench({
  evaluator,
  storage: browserStorage(),
  now: () => new Date(),
  newId: () => crypto.randomUUID(),
});

export const energySweeps = newEnergySweeps(session.store, startEnergySweep);

if (typeof window !== "undefined") watchPage(session, window);

export const workbench = session.actions;
