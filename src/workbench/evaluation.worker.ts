/** The worker that evaluates: one message in, two replies out. */
import { evaluateInGroups } from "./evaluateInGroups";
import type { EvaluationRequest } from "./evaluator";

self.addEventListener("message", ({ data }: MessageEvent<EvaluationRequest>) => {
  evaluateInGroups(data, (reply) => self.postMessage(reply));
});
