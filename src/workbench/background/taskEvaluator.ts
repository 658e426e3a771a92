import type { DriveEvaluation, FieldEvaluation } from "../../evaluation/evaluation";
import type { EvaluationRequest } from "./evaluationJob";
import type { Evaluator, EvaluatorReply } from "./evaluator";
import { newListeners } from "./listeners";
import type { ProgressStore } from "./progress";
import type { WorkerLike } from "./runner";
import { newTask } from "./task";
import type { Trouble } from "./trouble";

export interface TaskEvaluator extends Evaluator {
  progress: ProgressStore;
  /** Gives up the evaluation under way; there are no figures then. */
  cancel(): void;
}

interface Revised extends EvaluationRequest {
  revision: number;
}

/** ms; a healthy evaluation takes some hundredths of this */
const GRACE = 3000;

/** An evaluator that never has two requests under way: the newest waits, and does not wait long. */
export function taskEvaluator(startWorker: () => WorkerLike): TaskEvaluator {
  const listeners = newListeners<EvaluatorReply>();
  let newest: Revised | null = null;
  const task = newTask<Revised, DriveEvaluation, FieldEvaluation>({
    what: "the evaluation of the design",
    startWorker,
    grace: GRACE,
    // who keeps the figures says what is the matter, and with which edit
    report: () => undefined,
    lastEdit: () => null,
    listener: {
      partial: (field, { revision }) => listeners.tell({ group: "field", revision, field }),
      result: (drive, { revision }) => listeners.tell({ group: "drive", revision, drive }),
      trouble: (trouble, { revision }) => listeners.tell({ group: "failure", revision, trouble }),
    },
  });
  return {
    request(revision, design, mostEnergyTap) {
      newest = { revision, design, mostEnergyTap };
      task.ask(newest);
    },
    listen: listeners.listen,
    progress: task.progress,
    cancel() {
      task.cancel();
      const given = newest;
      if (!given) return;
      const trouble: Trouble = {
        what: "the evaluation of the design",
        failure: "given up",
        lastEdit: null,
        stopped: false,
        again: () => task.ask(given),
        resume: () => undefined,
      };
      listeners.tell({ group: "failure", revision: given.revision, trouble });
    },
    close: task.close,
  };
}
