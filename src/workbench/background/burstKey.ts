import type { Design } from "../../design/design";
import { sweptParts } from "../../evaluation/tuning/sweptParts";

/** A key that is equal for designs with equal bursts at every tap. */
export function burstKey(design: Design): string {
  return JSON.stringify(sweptParts(design));
}
