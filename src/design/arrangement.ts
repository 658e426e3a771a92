/** How a score is set for the coils of a show: its lanes, and how notes become on-times. */
import { z } from "zod";
import type { Expression, Lane } from "../calc/music/lane";

export interface Arrangement extends Expression {
  /** how many notes may sound at once on a coil */
  voices: number;
}

/** The score that the show plays; its bytes are kept apart, under the key. */
export interface KeptScore {
  fileName: string;
  bytesKey: string;
}

/** Below the worked example's longest on-time, with a knee at C5; common practice, no source. */
export const defaultArrangement: Arrangement = {
  onTime: 100e-6,
  kneeRate: 523.25,
  pitchExponent: 1,
  voices: 3,
};

const MOST_LANES = 4096;
const MOST_VOICES = 16;

export const lanesSchema: z.ZodType<Lane[]> = z
  .array(
    z.strictObject({
      part: z.string().min(1).max(64),
      coil: z.enum(["left", "right", "both", "none"]),
      transpose: z.number().int().min(-127).max(127),
      level: z.number().min(0).max(1),
    }),
  )
  .max(MOST_LANES);

export const arrangementSchema: z.ZodType<Arrangement> = z.strictObject({
  onTime: z.number().min(0),
  kneeRate: z.number().positive("must be above zero"),
  pitchExponent: z.number().min(0),
  voices: z.number().int().min(1).max(MOST_VOICES),
});

export const keptScoreSchema: z.ZodType<KeptScore | null> = z
  .strictObject({ fileName: z.string().max(300), bytesKey: z.string().min(1).max(100) })
  .nullable();
