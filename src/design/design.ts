import type { DesignParts } from "../calc/design-parts";
import { type DocumentKind, type Refusal, readDocument, readJson } from "./document";
import { fileStem } from "./fileName";
import { DESIGN_FORMAT, DESIGN_VERSION, designSchema } from "./schema";

/** The design of one coil; the document that is saved. */
export interface Design extends DesignParts {
  format: typeof DESIGN_FORMAT;
  version: typeof DESIGN_VERSION;
  title: string;
  notes: string;
}

const DESIGN: DocumentKind<Design> = {
  format: DESIGN_FORMAT,
  version: DESIGN_VERSION,
  schema: designSchema,
  migrations: {},
};

export type ParsedDesign = { ok: true; design: Design } | Refusal;

/**
 * A design from a file's text or from JSON data.
 * @returns the design with defaults filled in, or the faults, each with path and reason; never throws
 */
export function parseDesign(source: unknown): ParsedDesign {
  const json = typeof source === "string" ? readJson(source) : { ok: true as const, json: source };
  if (!json.ok) return json;
  const reading = readDocument(DESIGN, json.json);
  return reading.ok ? { ok: true, design: reading.value } : reading;
}

/** The text of a design's file: keys in the schema's order, two spaces, a line feed at the end. */
export function serialiseDesign(design: Design): string {
  return `${JSON.stringify(designSchema.parse(design), null, 2)}\n`;
}

/** The file name of an exported document, from its title. */
export function fileName(title: string, kind: "design" | "show"): string {
  return `${fileStem(title)}.coilwright-${kind}.json`;
}
