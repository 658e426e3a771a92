/** Two coils of a show side by side; all in SI units, never saved. */
import type { InducedInIdle } from "../../calc/coil/idleCoil";
import type { PairCoupling } from "../../calc/coil/pairCoupling";
import type { SplitResonances } from "../../calc/coil/pairResonances";

export interface CoilBeside {
  /** Hz, alone */
  resonance: number;
  /** Hz, with the other at the same top voltage in the set phase */
  resonanceBeside: number;
  /** turns for the aim, alone and beside the other; null if it cannot be reached */
  suggestedTap: number | null;
  retunedTap: number | null;
  /** V, breakout voltage at the breakout point if there is one, otherwise of the top load */
  breakoutVoltage: number;
  /** V, peak of its burst; its breakout voltage if it has no burst */
  topVoltage: number;
  /** induced by a burst of the other while this one idles; null if the other has no burst or this one does not ring */
  induced: InducedInIdle | null;
}

export interface PairResult {
  coupling: PairCoupling;
  split: SplitResonances;
  left: CoilBeside;
  right: CoilBeside;
  /** m, between the nearest points of the top loads */
  gap: number;
  /** V between the top loads, both at their top voltage in the set phase */
  voltageBetween: number;
  /** V/m, that voltage over the gap */
  meanField: number;
  /** m, spark lengths of both designs, end to end */
  sparkReach: number;
}

export type PairOutcome = { ok: true; pair: PairResult } | { ok: false; message: string };
