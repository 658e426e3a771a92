/** What is asked of the score's worker and what it answers; the same where there is no worker. */
import type { CoilLoad } from "../calc/music/coilLoad";
import type { Coil } from "../calc/music/lane";
import type { Design } from "../design/design";
import { type ArrangedScore, type PlayedCoil, playCoil } from "../evaluation/playedCoil";

export type CoilDesigns = Partial<Record<Coil, Design>>;
/** null where a design has no solution */
export type CoilLoads = Partial<Record<Coil, CoilLoad | null>>;

export interface ScoreRequest extends ArrangedScore {
  designs: CoilDesigns;
}

export type PlayedCoils = Partial<Record<Coil, PlayedCoil>>;

export type ScoreReply = { progress: number } | { played: PlayedCoils };

/** The schedules of every coil there is. */
export function playScore(request: ScoreRequest, onProgress: (done: number) => void): PlayedCoils {
  const coils = (["left", "right"] as const).filter((coil) => request.designs[coil]);
  const all: PlayedCoils = {};
  for (const [index, coil] of coils.entries()) {
    const design = request.designs[coil];
    if (!design) continue;
    const report = (done: number) => {
      onProgress((index + done) / coils.length);
      return true;
    };
    all[coil] = playCoil(request, coil, design, report) ?? undefined;
  }
  return all;
}
