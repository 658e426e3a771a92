import type { Design } from "../design/design";

/** Why a completed sweep has no tap with most energy. */
export function whyNoEnergy({ spark, interrupter }: Design): string {
  if (spark.length === 0) return "The design has no spark, so no energy goes into it";
  if (interrupter.onTime === 0) return "The on-time is zero, so no energy goes into the spark";
  return "No tap gives the spark energy within the pulse ratings of switches and bank";
}
