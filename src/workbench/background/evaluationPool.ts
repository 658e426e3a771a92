/** Evaluations of many designs, as sweeps and comparisons need them. */
import type { DriveEvaluation, FieldEvaluation } from "../../evaluation/evaluation";
import { session } from "../session/session";
import type { BatchOptions } from "./batch";
import type { EvaluationRequest } from "./evaluationJob";
import { newPool, spareProcessors } from "./pool";
import { lastEditOf, reportTo } from "./trouble";
import { startEvaluation } from "./workers";

export const evaluationPool = newPool<EvaluationRequest, DriveEvaluation, FieldEvaluation>(
  { what: "an evaluation", startWorker: startEvaluation },
  spareProcessors(),
);

/** Options of a batch that reports to the open session. */
export function ofSession(what: string): BatchOptions {
  return {
    what,
    report: reportTo(session.store),
    lastEdit: () => lastEditOf(session.store.getState()),
  };
}
