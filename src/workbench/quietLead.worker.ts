/** The worker that searches the quietest lead: one design in, one answer out. */
import type { Design } from "../design/design";
import { designQuietLead } from "../evaluation/quietLead";

self.addEventListener("message", (event: MessageEvent<Design>) => {
  self.postMessage(designQuietLead(event.data));
});
