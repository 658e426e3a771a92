import type { Coil } from "../calc/music/lane";
import { type Design, parseDesign } from "../design/design";
import { type Fault, readJson } from "../design/document";
import { MOST_DOCUMENT_BYTES } from "../design/fileLimits";
import type { ScoreFile } from "../design/scoreFile";
import { parseExportedShow, type Show } from "../design/show";
import { readInput } from "./readInput";

export type CoilDesigns = Partial<Record<Coil, Design>>;

type Refused = { kind: "refused"; faults: Fault[] };

export type ReadDocument =
  | { kind: "design"; design: Design }
  | { kind: "show"; show: Show; scoreFile: ScoreFile | null }
  | Refused;

function jsonIn(file: string): { ok: true; json: unknown } | { ok: false; faults: Fault[] } {
  const read = readInput(file, MOST_DOCUMENT_BYTES);
  return read.ok
    ? readJson(read.bytes.toString("utf8"))
    : { ok: false, faults: [{ path: "", message: read.message }] };
}

/** A show from a file, or why it is refused. */
function readShow(json: unknown): ReadDocument {
  const read = parseExportedShow(json);
  if (read.ok) return { kind: "show", show: read.show, scoreFile: read.scoreFile };
  return { kind: "refused", faults: read.faults };
}

function isShowFormat(json: unknown): boolean {
  return json !== null && typeof json === "object" && "format" in json && json.format === "coilwright-show";
}

/** A design or a show from a file, or why it is refused; a document without a format is read as a design. */
export function readDocument(file: string): ReadDocument {
  const read = jsonIn(file);
  if (!read.ok) return { kind: "refused", faults: read.faults };
  if (isShowFormat(read.json)) return readShow(read.json);
  const parsed = parseDesign(read.json);
  return parsed.ok ? { kind: "design", design: parsed.design } : { kind: "refused", faults: parsed.faults };
}

/** The designs of the coils that play in a show. */
export function coilsOf({ designs, left, right }: Show): CoilDesigns {
  return right === null ? { left: designs[left] } : { left: designs[left], right: designs[right] };
}
