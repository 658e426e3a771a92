/** The job of the worker that makes gate schedules; large data is returned in typed arrays. */
import type { Coil, Lane } from "../../calc/music/lane";
import { midiScore } from "../../calc/music/midiScore";
import { noteRoll } from "../../calc/music/noteRoll";
import { type ScheduleSummary, scheduleSummary } from "../../calc/music/scheduleSummary";
import type { Score } from "../../calc/music/score";
import type { Arrangement } from "../../design/arrangement";
import { type PlayedCoil, playCoil } from "../../evaluation/score/playedCoil";
import type { CoilDesigns } from "./coilLoadsJob";
import type { Tell } from "./protocol";

export interface ScoreRequest {
  /** identifies the bytes */
  bytesKey: string;
  /** of the score's file */
  bytes: Uint8Array;
  lanes: Lane[];
  arrangement: Arrangement;
  designs: CoilDesigns;
}

/** The results for one coil; gate times in ns. */
export interface CoilOutcome extends Pick<PlayedCoil, "line" | "moments" | "findings"> {
  gate: { starts: Float64Array<ArrayBuffer>; onTimes: Float64Array<ArrayBuffer> };
  summary: ScheduleSummary;
  /** as `noteRoll` draws it */
  roll: Uint8Array<ArrayBuffer>;
}

export type CoilOutcomes = Partial<Record<Coil, CoilOutcome>>;

/** The score that was read last, so that an edit of a lane does not read it again. */
let known: { key: string; score: Score } | null = null;

function scoreOf({ bytesKey, bytes }: ScoreRequest): Score | null {
  if (known?.key === bytesKey) return known.score;
  const reading = midiScore(bytes);
  known = reading.ok ? { key: bytesKey, score: reading.score } : null;
  return known?.score ?? null;
}

function outcomeOf({ schedule, ...told }: PlayedCoil, duration: number): CoilOutcome {
  const { starts, onTimes } = schedule.gate;
  return {
    ...told,
    gate: { starts: Float64Array.from(starts), onTimes: Float64Array.from(onTimes) },
    summary: scheduleSummary(schedule),
    roll: noteRoll(schedule.notes, duration),
  };
}

/** The schedules of all coils. */
export function scoreJob(request: ScoreRequest, { progress }: Pick<Tell<never>, "progress">): CoilOutcomes {
  const outcomes: CoilOutcomes = {};
  const score = scoreOf(request);
  if (!score) return outcomes;
  const { lanes, arrangement, designs } = request;
  const coils = (["left", "right"] as const).filter((coil) => designs[coil]);
  for (const [index, coil] of coils.entries()) {
    const design = designs[coil];
    if (!design) continue;
    const report = (done: number) => {
      progress((index + done) / coils.length);
      return true;
    };
    const played = playCoil({ score, lanes, arrangement }, coil, design, report);
    if (played) outcomes[coil] = outcomeOf(played, score.duration);
  }
  return outcomes;
}

/** The buffers that are transferred to the page instead of being copied. */
export function transferables(outcomes: CoilOutcomes): Transferable[] {
  return Object.values(outcomes).flatMap(({ gate, roll }) => [
    gate.starts.buffer,
    gate.onTimes.buffer,
    roll.buffer,
  ]);
}
