/** All rules, in the order of their findings. */

import {
  bankPeakCurrentOverRating,
  bankRmsCurrentOverRating,
  bankVoltageOverRating,
  limitAboveBankRating,
} from "../bank/bankRules";
import {
  burstNotSolved,
  burstTooLong,
  currentDrivenPastLimit,
  flashoverToSecondary,
  gradientHigh,
  limitTrips,
  onTimePastBeatMinimum,
  reservoirSags,
} from "../burst/burstRules";
import { comparatorDisagrees, coreSaturates } from "../currentLimit/currentLimitRules";
import {
  primaryInsideFormer,
  tapPastEnd,
  tubeThickerThanPitch,
  turnsAllButTouch,
  wallThickerThanTube,
} from "../primary/primaryRules";
import { noPoles } from "../response/responseRules";
import { enamelThinnerThanWire, formerWallTooThick, windingTooShort } from "../secondary/windingRules";
import {
  burstsOverlap,
  dischargeSlow,
  dutyOverLimit,
  mainsNearRating,
  mainsOverloaded,
  onTimeOverLongest,
  supplyOverloaded,
} from "../supply/supplyRules";
import { audienceInReach, audienceNear, ceilingNear, wallNear } from "../surroundings/clearanceRules";
import {
  closeToWinding,
  conductorsCross,
  primaryNotSolved,
  secondaryNotSolved,
  toroidWithoutHole,
} from "../surroundings/conductorRules";
import {
  busNearRating,
  busOverRating,
  deadTimeLongerThanHalfPeriod,
  deadTimeLongerThanLead,
  junctionNearLimit,
  junctionOverLimit,
  leadTooLong,
  limitAboveRating,
  peakCurrentOverRating,
  turnOffLate,
} from "../switches/switchesRules";
import {
  couplingHigh,
  measuredResonanceDiffers,
  noSuggestedTap,
  nothingForMostEnergy,
  notTuned,
} from "../tuning/tuningRules";
import { beyondComputedRange } from "./beyondSpan";
import { evaluationFailed } from "./evaluationFailed";
import { aboveRange, belowRange } from "./fieldRange";
import { resultNotFinite } from "./resultNotFinite";
import type { Rule } from "./rule";

export const RULES: readonly Rule[] = [
  beyondComputedRange,
  toroidWithoutHole,
  conductorsCross,
  windingTooShort,
  enamelThinnerThanWire,
  formerWallTooThick,
  tapPastEnd,
  tubeThickerThanPitch,
  wallThickerThanTube,
  primaryInsideFormer,
  secondaryNotSolved,
  primaryNotSolved,
  turnsAllButTouch,
  burstNotSolved,
  burstTooLong,
  noPoles,
  audienceInReach,
  peakCurrentOverRating,
  limitAboveRating,
  busOverRating,
  junctionOverLimit,
  bankVoltageOverRating,
  bankPeakCurrentOverRating,
  bankRmsCurrentOverRating,
  coreSaturates,
  supplyOverloaded,
  mainsOverloaded,
  burstsOverlap,
  nothingForMostEnergy,
  noSuggestedTap,
  closeToWinding,
  couplingHigh,
  audienceNear,
  ceilingNear,
  wallNear,
  gradientHigh,
  flashoverToSecondary,
  currentDrivenPastLimit,
  limitAboveBankRating,
  busNearRating,
  junctionNearLimit,
  turnOffLate,
  deadTimeLongerThanLead,
  deadTimeLongerThanHalfPeriod,
  leadTooLong,
  reservoirSags,
  mainsNearRating,
  onTimeOverLongest,
  dutyOverLimit,
  comparatorDisagrees,
  belowRange,
  aboveRange,
  measuredResonanceDiffers,
  notTuned,
  limitTrips,
  onTimePastBeatMinimum,
  dischargeSlow,
  evaluationFailed,
  resultNotFinite,
];
