/** The worker that works out what bursts cost: designs in, loads out. */
import { coilLoads } from "./coilLoading";
import type { CoilDesigns } from "./scoreScheduling";

self.addEventListener("message", (event: MessageEvent<CoilDesigns>) => {
  self.postMessage(coilLoads(event.data));
});
