/** Two coils of a show side by side; all in SI units, never saved. */
import type { InducedInIdle } from "../../calc/coil/idleCoil";
import type { PairCoupling } from "../../calc/coil/pairCoupling";
import type { SplitResonances } from "../../calc/coil/pairResonances";

export interface CoilBeside {
  /** Hz, alone */
  resonance: number;
  /** Hz, with the other at the same top voltage in the phase that is set */
  resonanceBeside: number;
  /** turns for the aim, alone and beside the other; null where it cannot be reached */
  suggestedTap: number | null;
  retunedTap: number | null;
  /** V, at which the top load breaks out: at its point where it has one, by itself else */
  breakoutVoltage: number;
  /** V, largest of its burst; its breakout voltage where it has no burst */
  topVoltage: number;
  /** what a burst of the other leaves in this one while it is idle; null where the other has no burst or this one does not ring */
  induced: InducedInIdle | null;
}

export interface PairResult {
  coupling: PairCoupling;
  split: SplitResonances;
  left: CoilBeside;
  right: CoilBeside;
  /** m, between the nearest points of the top loads */
  gap: number;
  /** V between the top loads, both at their top voltage in the phase that is set */
  voltageBetween: number;
  /** V/m, that voltage over the gap */
  meanField: number;
  /** m, both sparks that the designs are made for, end to end */
  sparkReach: number;
}

export type PairOutcome = { ok: true; pair: PairResult } | { ok: false; message: string };
