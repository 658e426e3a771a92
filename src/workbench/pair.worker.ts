/** The worker that couples two coils: one request in, one outcome out. */
import { type PairRequest, pairOutcome } from "./pairing";

self.addEventListener("message", (event: MessageEvent<PairRequest>) => {
  self.postMessage(pairOutcome(event.data));
});
