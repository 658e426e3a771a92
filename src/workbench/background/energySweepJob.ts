/** The job of the worker that sweeps bursts. */
import type { EnergySweep } from "../../calc/circuit/energySweep";
import type { Design } from "../../design/design";
import { energySweep } from "../../evaluation/tuning/energySweepStage";
import type { Tell } from "./protocol";

export interface EnergyRequest {
  design: Design;
  /** "own": only what the tuning aim needs */
  onTimes: "all" | "own";
}

/** Sweeps and reports its progress; null if the coil has no solution. */
export function energySweepJob(
  { design, onTimes }: EnergyRequest,
  { progress }: Pick<Tell<never>, "progress">,
): EnergySweep | null {
  const steps = energySweep(design, onTimes);
  let step = steps.next();
  for (; !step.done; step = steps.next()) progress(step.value);
  return step.value;
}
