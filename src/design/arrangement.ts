/** How a score is arranged for the coils of a show: its lanes, and how notes become on-times. */
import * as z from "zod/mini";
import type { Lane } from "../calc/music/lane";
import { MOST_PARTS } from "../calc/music/score";
import type { ValueOf } from "../fields/declaration";
import { defaultValue } from "../fields/defaults";
import { arrangementDeclaration, laneFields } from "../fields/showFields";
import { schemaOf } from "./schemaOf";

export type Arrangement = ValueOf<typeof arrangementDeclaration>;

/** The score that the show plays; its bytes are stored separately, under the key. */
export interface KeptScore {
  fileName: string;
  bytesKey: string;
}

/** Below the worked example's longest on-time, with the roll-off frequency at C5; common practice, no source. */
export const defaultArrangement = defaultValue(arrangementDeclaration);

export const lanesSchema: z.ZodMiniType<Lane[]> = z
  .array(
    z.strictObject({
      part: z.string().check(z.minLength(1), z.maxLength(64)),
      coil: z.enum(["left", "right", "both", "none"]),
      transpose: schemaOf(laneFields.transpose),
      level: schemaOf(laneFields.level),
    }),
  )
  .check(z.maxLength(MOST_PARTS));

export const arrangementSchema = schemaOf(arrangementDeclaration);

export const keptScoreSchema: z.ZodMiniType<KeptScore | null> = z.nullable(
  z.strictObject({
    fileName: z.string().check(z.maxLength(300)),
    bytesKey: z.string().check(z.minLength(1), z.maxLength(100)),
  }),
);
