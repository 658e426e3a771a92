/** Results of the current transformer and its comparator, in SI units. */
import type { SenseProposal } from "../../calc/circuit/currentTransformer";
import type { OrNull } from "../orNull";

export interface SenseAtRest {
  transformerRatio: number;
  /** V at the comparator at the over-current limit */
  limitVoltageAtComparator: number;
  senseProposal: SenseProposal;
}

export interface SenseUnderBurst {
  peakVoltageAtComparator: number;
  burdenPower: number;
  /** T, of the core with the largest flux density, at the larger of limit and peak */
  coreFluxDensity: number | null;
}

export type CurrentLimitResult = SenseAtRest & OrNull<SenseUnderBurst>;
