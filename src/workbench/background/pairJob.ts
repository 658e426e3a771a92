/** The job of the worker that computes a pair of coils. */
import type { Design } from "../../design/design";
import type { Show } from "../../design/show";
import type { PairOutcome } from "../../evaluation/pair/pairResults";
import { pairResult } from "../../evaluation/pair/pairStage";

export interface PairRequest {
  left: Design;
  right: Design;
  /** m */
  spacing: number;
  phase: Show["phase"];
}

export function pairJob({ left, right, spacing, phase }: PairRequest): PairOutcome {
  return pairResult(left, right, spacing, phase);
}
