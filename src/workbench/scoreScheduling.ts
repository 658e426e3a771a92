/** What is asked of the score's worker and what it answers; the same where there is no worker. */
import { coilLimits } from "../calc/music/coilLimits";
import { type CoilSchedule, coilSchedule } from "../calc/music/gateSchedule";
import type { Coil, Lane } from "../calc/music/lane";
import type { Score } from "../calc/music/score";
import { type TimeLine, timeLine } from "../calc/music/timeLine";
import type { Arrangement } from "../design/arrangement";
import type { Design } from "../design/design";

export type Interrupters = Partial<Record<Coil, Design["interrupter"]>>;

export interface ScoreRequest {
  score: Score;
  lanes: Lane[];
  arrangement: Arrangement;
  interrupters: Interrupters;
}

export interface PlayedCoil {
  schedule: CoilSchedule;
  /** duty in equal steps */
  duty: Pick<TimeLine, "time" | "duty">;
}

export type PlayedCoils = Partial<Record<Coil, PlayedCoil>>;

export type ScoreReply = { progress: number } | { played: PlayedCoils };

const STEPS = 600;

/** Only the duty: burst costs are not known here. */
function dutyLine(schedule: CoilSchedule, duration: number): PlayedCoil["duty"] {
  const { time, duty } = timeLine(schedule.gate, duration, {
    costs: [],
    thermal: [],
    caseTemperature: 0,
    bank: { resistance: 0, timeConstant: 1 },
    airTemperature: 0,
    step: Math.max(0.05, duration / STEPS),
  });
  return { time, duty };
}

/** The schedules of every coil there is. */
export function playScore(request: ScoreRequest, onProgress: (done: number) => void): PlayedCoils {
  const { score, lanes, arrangement, interrupters } = request;
  const { voices, ...expression } = arrangement;
  const coils = (["left", "right"] as const).filter((coil) => interrupters[coil]);
  const played: PlayedCoils = {};
  for (const [index, coil] of coils.entries()) {
    const interrupter = interrupters[coil];
    if (!interrupter) continue;
    const report = (done: number) => {
      onProgress((index + done) / coils.length);
      return true;
    };
    const limits = coilLimits(interrupter, voices);
    const schedule = coilSchedule(score, lanes, coil, limits, expression, report);
    if (schedule) played[coil] = { schedule, duty: dutyLine(schedule, score.duration) };
  }
  return played;
}
