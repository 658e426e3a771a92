/** How a score is set for the coils of a show: its lanes, and how notes become on-times. */
import { z } from "zod";
import type { Expression, Lane } from "../calc/music/lane";
import { MOST_PARTS } from "../calc/music/score";
import { arrangementFields, laneFields, type ScoreField } from "./fields/score";

export interface Arrangement extends Expression {
  /** how many notes may sound at once on a coil */
  voices: number;
}

/** The score that the show plays; its bytes are kept apart, under the key. */
export interface KeptScore {
  fileName: string;
  bytesKey: string;
}

function standard({ default: value, path }: ScoreField): number {
  if (value === null) throw new Error(`“${path}” is declared without a default`);
  return value;
}

/** Below the worked example's longest on-time, with a knee at C5; common practice, no source. */
export const defaultArrangement: Arrangement = {
  onTime: standard(arrangementFields.onTime),
  kneeRate: standard(arrangementFields.kneeRate),
  pitchExponent: standard(arrangementFields.pitchExponent),
  voices: standard(arrangementFields.voices),
};

function within({ limits, whole }: ScoreField): z.ZodNumber {
  const bounded = z.number().min(limits.minimum).max(limits.maximum);
  return whole ? bounded.int("must be a whole number") : bounded;
}

export const lanesSchema: z.ZodType<Lane[]> = z
  .array(
    z.strictObject({
      part: z.string().min(1).max(64),
      coil: z.enum(["left", "right", "both", "none"]),
      transpose: within(laneFields.transpose),
      level: within(laneFields.level),
    }),
  )
  .max(MOST_PARTS);

export const arrangementSchema: z.ZodType<Arrangement> = z.strictObject({
  onTime: within(arrangementFields.onTime),
  kneeRate: within(arrangementFields.kneeRate),
  pitchExponent: within(arrangementFields.pitchExponent),
  voices: within(arrangementFields.voices),
});

export const keptScoreSchema: z.ZodType<KeptScore | null> = z
  .strictObject({ fileName: z.string().max(300), bytesKey: z.string().min(1).max(100) })
  .nullable();
