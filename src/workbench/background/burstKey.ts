import type { Design } from "../../design/design";
import { sweptParts } from "../../evaluation/tuning/sweptParts";

/** Equal for designs whose bursts are equal at every tap. */
export function burstKey(design: Design): string {
  return JSON.stringify(sweptParts(design));
}
