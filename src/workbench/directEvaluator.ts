import { evaluateInGroups } from "./evaluateInGroups";
import type { Evaluator, EvaluatorReply } from "./evaluator";
import { newListeners } from "./listeners";

/** An evaluator that answers at once, in the same thread: for tests and where there are no workers. */
export function directEvaluator(): Evaluator {
  const listeners = newListeners<EvaluatorReply>();
  return {
    request: (revision, design, mostEnergyTap) =>
      evaluateInGroups({ revision, design, mostEnergyTap }, listeners.tell),
    listen: listeners.listen,
    close: () => undefined,
  };
}
