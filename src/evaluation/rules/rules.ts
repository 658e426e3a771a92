/** Every rule, each with its test; the findings of a design are what they say, in this order. */

import {
  bankPeakCurrentOverRating,
  bankRmsCurrentOverRating,
  bankVoltageOverRating,
  limitAboveBankRating,
} from "./bank";
import { beyondWhatIsSolved } from "./beyondSpan";
import {
  burstNotSolved,
  burstTooLong,
  currentDrivenPastLimit,
  flashoverToSecondary,
  gradientHigh,
  limitTrips,
  onTimePastBeatMinimum,
  reservoirSags,
} from "./burst";
import { audienceInReach, audienceNear, ceilingNear, wallNear } from "./clearance";
import {
  closeToWinding,
  conductorsCross,
  primaryNotSolved,
  secondaryNotSolved,
  toroidWithoutHole,
} from "./conductorsCross";
import { comparatorDisagrees, coreSaturates } from "./currentLimit";
import { evaluationFailed } from "./evaluationFailed";
import { aboveRange, belowRange } from "./fieldRange";
import { noPoles } from "./poles";
import {
  primaryInsideFormer,
  tapPastEnd,
  tubeThickerThanPitch,
  turnsAllButTouch,
  wallThickerThanTube,
} from "./primaryFits";
import { resultNotFinite } from "./resultNotFinite";
import type { Rule } from "./rule";
import {
  burstsOverlap,
  dischargeSlow,
  dutyOverLimit,
  mainsNearRating,
  mainsOverloaded,
  onTimeOverLongest,
  supplyOverloaded,
} from "./supply";
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
} from "./switches";
import {
  couplingHigh,
  measuredResonanceDiffers,
  noSuggestedTap,
  nothingForMostEnergy,
  notTuned,
} from "./tuning";
import { enamelThinnerThanWire, formerWallTooThick, windingTooShort } from "./windingFits";

export const RULES: readonly Rule[] = [
  beyondWhatIsSolved,
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
