/** What is asked of the worker that makes gate schedules. */
import type { Coil } from "../../calc/music/lane";
import { type ArrangedScore, type PlayedCoil, playCoil } from "../../evaluation/playedCoil";
import type { CoilDesigns } from "./coilLoadsJob";
import type { Tell } from "./protocol";

export interface ScoreRequest extends ArrangedScore {
  designs: CoilDesigns;
}

export type PlayedCoils = Partial<Record<Coil, PlayedCoil>>;

/** The schedules of every coil there is. */
export function scoreJob(request: ScoreRequest, { progress }: Pick<Tell<never>, "progress">): PlayedCoils {
  const coils = (["left", "right"] as const).filter((coil) => request.designs[coil]);
  const all: PlayedCoils = {};
  for (const [index, coil] of coils.entries()) {
    const design = request.designs[coil];
    if (!design) continue;
    const report = (done: number) => {
      progress((index + done) / coils.length);
      return true;
    };
    all[coil] = playCoil(request, coil, design, report) ?? undefined;
  }
  return all;
}
