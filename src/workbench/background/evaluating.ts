/** Keeps the evaluation in step with the open design: requests one at each change, ignores outdated replies. */

import type { StoreApi } from "zustand/vanilla";
import { type BankResult, NO_STRESS, type TankResult } from "../../evaluation/bank/bankResults";
import { withNotice, withoutNotice } from "../session/notice";
import { openDesignOf } from "../session/showEdits";
import { EMPTY_EVALUATION, type WorkbenchState } from "../session/workbenchState";
import { burstKey } from "./burstKey";
import type { Evaluator, EvaluatorReply } from "./evaluator";
import { failedEvaluation } from "./failedEvaluation";
import { lastEditOf, type Trouble, troubleNotice } from "./trouble";

const FAILURE = "evaluation-failed";

type Changes = Partial<WorkbenchState>;

/** The bank's stress belongs to the second group: until that arrives, the old values stay. */
function withOldStress(bank: BankResult | null, old: TankResult | null): TankResult | null {
  return bank && { ...NO_STRESS, ...old, ...bank };
}

function afterField(state: WorkbenchState, reply: Extract<EvaluatorReply, { group: "field" }>): Changes {
  if (reply.revision <= state.fieldRevision || reply.revision < state.oldestRevision) return {};
  const tank = withOldStress(reply.field.tank, state.evaluation.tank);
  return { evaluation: { ...state.evaluation, ...reply.field, tank }, fieldRevision: reply.revision };
}

function afterDrive(state: WorkbenchState, reply: Extract<EvaluatorReply, { group: "drive" }>): Changes {
  if (reply.revision <= state.driveRevision || reply.revision < state.oldestRevision) return {};
  return {
    evaluation: { ...state.evaluation, ...reply.drive },
    driveRevision: reply.revision,
    evaluating: reply.revision !== state.revision,
    notices: withoutNotice(state.notices, FAILURE),
  };
}

/** The old results belong to another design than the one on screen, so they are removed. */
function afterFailure(state: WorkbenchState, reply: Extract<EvaluatorReply, { group: "failure" }>): Changes {
  const { revision, trouble } = reply;
  const current = revision === state.revision;
  const notice = troubleNotice({ ...trouble, lastEdit: current ? lastEditOf(state) : null }, FAILURE);
  const notices = withNotice(state.notices, notice);
  if (!current) return { notices };
  return {
    notices,
    evaluation: failedEvaluation(state),
    fieldRevision: revision,
    driveRevision: revision,
    evaluating: false,
  };
}

/** The changes by a reply; none if it is older than what is shown. */
export function afterReply(state: WorkbenchState, reply: EvaluatorReply): Changes {
  if (reply.group === "field") return afterField(state, reply);
  if (reply.group === "drive") return afterDrive(state, reply);
  return afterFailure(state, reply);
}

/** The tap with most energy if the aim needs it and it belongs to these bursts; null if unknown. */
function knownTap({ history, mostEnergy }: WorkbenchState): number | null {
  const design = openDesignOf(history.present);
  if (design.tuningAim.kind !== "most energy" || mostEnergy?.key !== burstKey(design)) return null;
  return mostEnergy.tap;
}

/** The changes that follow from a new show or a new tap with most energy; null if the open design is the same. */
function afterChange(state: WorkbenchState, before: WorkbenchState): Changes | null {
  const [now, then] = [state.history.present, before.history.present];
  const sameDesign = openDesignOf(now) === openDesignOf(then) && now.open === then.open;
  if (sameDesign && (state.mostEnergy === before.mostEnergy || knownTap(state) === knownTap(before)))
    return null;
  const revision = state.revision + 1;
  const begun = { revision, evaluating: true };
  return now.open === then.open
    ? begun
    : { ...begun, evaluation: EMPTY_EVALUATION, oldestRevision: revision };
}

/** Connects a store and an evaluator, and requests the first evaluation. Returns a function that disconnects them. */
export function connectEvaluator(store: StoreApi<WorkbenchState>, evaluator: Evaluator): () => void {
  const request = () => {
    const state = store.getState();
    evaluator.request(state.revision, openDesignOf(state.history.present), knownTap(state));
  };
  /** Requests the same design once more, under a new revision, because the failed one has been answered. */
  const again = (trouble: Trouble) => {
    trouble.resume();
    store.setState(({ revision }) => ({ revision: revision + 1, evaluating: true }));
    request();
  };
  const repeatable = (reply: EvaluatorReply): EvaluatorReply => {
    if (reply.group !== "failure") return reply;
    const { trouble } = reply;
    return { ...reply, trouble: { ...trouble, again: () => again(trouble) } };
  };
  const endListening = evaluator.listen((reply) =>
    store.setState((state) => afterReply(state, repeatable(reply))),
  );
  const endFollowing = store.subscribe((state, before) => {
    const changes = afterChange(state, before);
    if (!changes) return;
    store.setState(changes);
    request();
  });
  store.setState({ revision: 1, evaluating: true });
  request();
  return () => {
    endListening();
    endFollowing();
  };
}
