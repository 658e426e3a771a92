/** Every rule, each with its test; the findings of a design are what they say, in this order. */
import { closeToWinding, conductorsCross, primaryNotSolved, secondaryNotSolved } from "./conductorsCross";
import { currentsNotComputed } from "./drive";
import { aboveRange, belowRange } from "./fieldRange";
import { primaryInsideFormer, tapPastEnd, tubeThickerThanPitch, wallThickerThanTube } from "./primaryFits";
import { resultNotFinite } from "./resultNotFinite";
import type { Rule } from "./rule";
import { couplingHigh, measuredResonanceDiffers, noSuggestedTap, notTuned } from "./tuning";
import { gradientHigh } from "./winding";
import { enamelThinnerThanWire, windingTooShort } from "./windingFits";

export const RULES: readonly Rule[] = [
  conductorsCross,
  windingTooShort,
  enamelThinnerThanWire,
  tapPastEnd,
  tubeThickerThanPitch,
  wallThickerThanTube,
  primaryInsideFormer,
  secondaryNotSolved,
  primaryNotSolved,
  noSuggestedTap,
  closeToWinding,
  couplingHigh,
  gradientHigh,
  belowRange,
  aboveRange,
  measuredResonanceDiffers,
  notTuned,
  currentsNotComputed,
  resultNotFinite,
];
