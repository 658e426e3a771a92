/** The worker that evaluates: one message in, two replies out. */
import type { Design } from "../design/design";
import { evaluateInGroups } from "./evaluateInGroups";

export interface EvaluationRequest {
  revision: number;
  design: Design;
}

self.addEventListener("message", (event: MessageEvent<EvaluationRequest>) => {
  evaluateInGroups(event.data.revision, event.data.design, (reply) => self.postMessage(reply));
});
