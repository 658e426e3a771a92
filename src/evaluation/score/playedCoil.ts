/** A score played on one coil within its design's limits, and the load on the coil. */

import { coilLimits } from "../../calc/music/coilLimits";
import type { CoilLoad } from "../../calc/music/coilLoad";
import { type CoilSchedule, coilSchedule } from "../../calc/music/gateSchedule";
import type { Coil, Lane } from "../../calc/music/lane";
import type { Score } from "../../calc/music/score";
import { type TimeLine, timeLine } from "../../calc/music/timeLine";
import { type WorstMoment, worstMoments } from "../../calc/music/worstMoments";
import type { Arrangement } from "../../design/arrangement";
import type { Design } from "../../design/design";
import { coilLoad } from "./coilLoadStage";
import { type ScoreFinding, scoreFindings } from "./scoreFindings";

/** A score and its arrangement for the coils. */
export interface ArrangedScore {
  score: Score;
  lanes: Lane[];
  arrangement: Arrangement;
}

export interface PlayedCoil {
  schedule: CoilSchedule;
  line: TimeLine;
  moments: WorstMoment[];
  findings: ScoreFinding[];
}

function judged(schedule: CoilSchedule, duration: number, design: Design, load: CoilLoad | null): PlayedCoil {
  const { dutyLimit, dutyWindow } = design.interrupter;
  const line = timeLine(schedule.gate, duration, load, dutyWindow);
  const moments = worstMoments(line, load, dutyLimit);
  return { schedule, line, moments, findings: scoreFindings(schedule, moments, load !== null) };
}

/**
 * If the design has no solution, only the interrupter's limits are applied, and a finding says so.
 * @param onProgress called now and then with the part that is done, 0 … 1; returning false cancels
 * @returns null if it was cancelled
 */
export function playCoil(
  { score, lanes, arrangement }: ArrangedScore,
  coil: Coil,
  design: Design,
  onProgress?: (done: number) => boolean,
): PlayedCoil | null {
  const { voices, ...expression } = arrangement;
  const load = coilLoad(design);
  const limits = coilLimits(design.interrupter, voices, load);
  const schedule = coilSchedule(score, lanes, coil, limits, expression, onProgress);
  return schedule && judged(schedule, score.duration, design, load);
}
