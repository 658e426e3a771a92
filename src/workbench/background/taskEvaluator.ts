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
  /** Cancels the evaluation in progress; there are no results then. */
  cancel(): void;
}

interface Revised extends EvaluationRequest {
  revision: number;
}

/** ms; a normal evaluation takes a few hundredths of this */
const GRACE = 3000;

/** An evaluator with one request in progress at a time: the newest waits, but not for long. */
export function taskEvaluator(startWorker: () => WorkerLike): TaskEvaluator {
  const listeners = newListeners<EvaluatorReply>();
  let newest: Revised | null = null;
  const task = newTask<Revised, DriveEvaluation, FieldEvaluation>({
    what: "the evaluation of the design",
    startWorker,
    grace: GRACE,
    // the listener reports the failure with its edit
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
        failure: "cancelled",
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
