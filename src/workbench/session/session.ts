/** The session of this page. It awaits the stored data, so that no session exists without them. */
import { newEnergySweeps } from "../background/energySession";
import { taskEvaluator } from "../background/taskEvaluator";
import { startEnergySweep, startEvaluation } from "../background/workers";
import { askToPersist, browserStorage, grantedBytes } from "../keeping/browserStorage";
import { findAtStart } from "../keeping/findAtStart";
import { watchPage } from "../keeping/page";
import { afterRefusedBytes } from "../keeping/saveNotices";
import { listenForRefusedBytes } from "../keeping/scoreBytes";
import { createWorkbench } from "./store";

/** The evaluation of the open design. */
export const evaluator = taskEvaluator(startEvaluation);

export const session = createWorkbench({
  evaluator,
  storage: browserStorage(),
  found: await findAtStart(),
  quota: grantedBytes,
  persist: askToPersist,
  now: () => new Date(),
  newId: () => crypto.randomUUID(),
});

export const energySweeps = newEnergySweeps(session.store, startEnergySweep);

if (typeof window !== "undefined") watchPage(session, window);

listenForRefusedBytes((sentence) => session.store.setState(afterRefusedBytes(sentence)));

export const workbench = session.actions;
