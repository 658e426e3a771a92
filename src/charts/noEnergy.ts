import type { Design } from "../design/design";

/** Why no tap is the one with most energy, once the bursts are swept. */
export function whyNoEnergy({ spark, interrupter }: Design): string {
  if (spark.length === 0) return "The design has no spark, so no energy goes into it";
  if (interrupter.onTime === 0) return "The on-time is nothing, so no energy goes into the spark";
  return "No tap gives the spark energy within what switches and bank bear in pulses";
}
