/** What is asked of the worker that sweeps bursts and what it answers; the same where there is no worker. */
import type { Design } from "../design/design";
import { type EnergySweep, energySweep, sweptParts } from "../evaluation/energySweep";

export interface EnergyRequest {
  design: Design;
  /** "own": only what the tuning aim needs */
  onTimes: "all" | "own";
}

export type EnergyReply =
  | { progress: number }
  /** null where the coil has no solution */
  | { sweep: EnergySweep | null }
  | { failure: string };

/** Equal for designs whose bursts are equal at every tap. */
export function burstKey(design: Design): string {
  return JSON.stringify(sweptParts(design));
}

/** Progress after each hundredth is enough to see it move. */
const PROGRESS_STEP = 0.01;

function sweep({ design, onTimes }: EnergyRequest, tell: (reply: EnergyReply) => void): EnergySweep | null {
  const steps = energySweep(design, onTimes);
  let told = 0;
  let step = steps.next();
  for (; !step.done; step = steps.next()) {
    if (step.value < told + PROGRESS_STEP) continue;
    told = step.value;
    tell({ progress: told });
  }
  return step.value;
}

/** Sweeps, telling how far it is; what is thrown becomes a sentence. */
export function sweepBursts(request: EnergyRequest, tell: (reply: EnergyReply) => void): void {
  try {
    tell({ sweep: sweep(request, tell) });
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    tell({
      failure: `The bursts could not be swept (${reason}). Take back the last change, or compute again.`,
    });
  }
}
