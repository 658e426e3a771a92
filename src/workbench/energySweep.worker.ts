/** The worker that sweeps bursts: one request in; progress, then the sweep out. */
import { type EnergyRequest, sweepBursts } from "./energySweeping";

self.addEventListener("message", (event: MessageEvent<EnergyRequest>) => {
  sweepBursts(event.data, (reply) => self.postMessage(reply));
});
