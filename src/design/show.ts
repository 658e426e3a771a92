import * as z from "zod/mini";
import type { TopLoad } from "../calc/design-parts";
import type { Lane } from "../calc/music/lane";
import { spacingField } from "../fields/showFields";
import { topLoadFields } from "../fields/topLoadFields";
import {
  type Arrangement,
  arrangementSchema,
  defaultArrangement,
  type KeptScore,
  keptScoreSchema,
  lanesSchema,
} from "./arrangement";
import type { Design } from "./design";
import { type DocumentKind, type Refusal, readDocument, readJson } from "./document";
import { designSchema } from "./schema";
import { schemaOf } from "./schemaOf";
import { type ScoreFile, scoreFileSchema } from "./scoreFile";

/** A top load to compare with others on the open design. */
export interface LineUpCandidate {
  id: string;
  name: string;
  topLoad: TopLoad;
  /** whether its curves are drawn */
  shown: boolean;
}

/** The document that is opened and saved: designs by id, the two that play, and top loads to compare. */
export interface Show {
  format: "coilwright-show";
  version: 1;
  name: string;
  designs: Record<string, Design>;
  /** ids in the order of the list */
  order: string[];
  /** id of the open design */
  open: string;
  left: string;
  right: string | null;
  /** m, axis to axis */
  spacing: number;
  phase: "in phase" | "opposed";
  lineUp: { candidates: LineUpCandidate[] };
  lanes: Lane[];
  arrangement: Arrangement;
  score: KeptScore | null;
}

const MOST_CANDIDATES = 4;
const MOST_DESIGNS = 200;

const id = z.string().check(z.minLength(1), z.maxLength(64));

/** The count is checked first: otherwise a hundred thousand designs would be refused key by key. */
const designs = z.pipe(
  z
    .record(id, z.unknown())
    .check(
      z.refine((all) => Object.keys(all).length <= MOST_DESIGNS, `must hold at most ${MOST_DESIGNS} designs`),
    ),
  z.record(id, designSchema),
);

const LONGEST_NAME = 200;
const LONGEST_CANDIDATE_NAME = 100;

const candidates = z
  .array(
    z.strictObject({
      id,
      name: z.string().check(z.maxLength(LONGEST_CANDIDATE_NAME)),
      topLoad: schemaOf(topLoadFields),
      shown: z.boolean(),
    }),
  )
  .check(z.maxLength(MOST_CANDIDATES));

const parts = z.strictObject({
  format: z.literal("coilwright-show"),
  version: z.literal(1),
  name: z.optional(z.string().check(z.maxLength(LONGEST_NAME))),
  designs,
  order: z.array(id).check(z.minLength(1), z.maxLength(MOST_DESIGNS)),
  open: id,
  left: id,
  right: z.nullable(id),
  spacing: z._default(schemaOf(spacingField), spacingField.default),
  phase: z._default(z.enum(["in phase", "opposed"]), "in phase"),
  lineUp: z._default(z.strictObject({ candidates }), { candidates: [] }),
  lanes: z._default(lanesSchema, []),
  arrangement: z._default(arrangementSchema, defaultArrangement),
  score: z._default(keptScoreSchema, null),
});

type Parts = z.output<typeof parts>;

function checkIds(show: Parts, context: z.core.$RefinementCtx): void {
  const known = new Set(Object.keys(show.designs));
  const check = (checkedId: string | null, path: (string | number)[]): void => {
    if (checkedId !== null && !known.has(checkedId))
      context.addIssue({ code: "custom", path, message: "must name a design of this show" });
  };
  for (const [index, listedId] of show.order.entries()) check(listedId, ["order", index]);
  for (const key of ["open", "left", "right"] as const) check(show[key], [key]);
  if (new Set(show.order).size !== known.size) {
    context.addIssue({ code: "custom", path: ["order"], message: "must list every design once" });
  }
}

/** A show without a name, from before shows had one, gets the title of its left design. */
function withName({ format, version, name, ...rest }: Parts): Show {
  return { format, version, name: name ?? rest.designs[rest.left].title, ...rest };
}

const SHOW: DocumentKind<Show> = {
  format: "coilwright-show",
  version: 1,
  schema: z.pipe(parts.check(z.superRefine(checkIds)), z.transform(withName)),
  migrations: {},
};

/** An exported show, with the bytes of its score if they were available. */
interface ExportedShow {
  show: Show;
  scoreFile: ScoreFile | null;
}

const exportedParts = z.extend(parts, { scoreFile: z.optional(scoreFileSchema) });

function checkScoreName(
  { score, scoreFile }: z.output<typeof exportedParts>,
  context: z.core.$RefinementCtx,
): void {
  if (!scoreFile || score) return;
  context.addIssue({
    code: "custom",
    path: ["score"],
    message: "must name the score whose bytes are in scoreFile",
  });
}

const EXPORTED_SHOW: DocumentKind<ExportedShow> = {
  ...SHOW,
  schema: z.pipe(
    exportedParts.check(z.superRefine(checkIds), z.superRefine(checkScoreName)),
    z.transform(({ scoreFile = null, ...show }) => ({ show: withName(show), scoreFile })),
  ),
};

export type ParsedShow = { ok: true; show: Show } | Refusal;

/**
 * A show from a file's text or from JSON data.
 * @returns the show with defaults filled in, or the faults with path and reason; never throws
 */
export function parseShow(source: unknown): ParsedShow {
  const json = typeof source === "string" ? readJson(source) : { ok: true as const, json: source };
  if (!json.ok) return json;
  const reading = readDocument(SHOW, json.json);
  return reading.ok ? { ok: true, show: reading.value } : reading;
}

/**
 * An exported show, from the text of its file or from JSON data.
 * @returns the show and the packed bytes of its score, or the faults with path and reason; never throws
 */
export function parseExportedShow(source: unknown): ({ ok: true } & ExportedShow) | Refusal {
  const json = typeof source === "string" ? readJson(source) : { ok: true as const, json: source };
  if (!json.ok) return json;
  const reading = readDocument(EXPORTED_SHOW, json.json);
  return reading.ok ? { ok: true, ...reading.value } : reading;
}

/** The text of a show's file, with the bytes of its score if given. */
export function serialiseShow(show: Show, scoreFile?: ScoreFile): string {
  return `${JSON.stringify({ ...show, scoreFile }, null, 2)}\n`;
}
