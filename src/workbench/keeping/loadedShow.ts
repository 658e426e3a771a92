/** Reads a stored show: parses, checks the envelope, migrates and validates; nothing is written here. */
import type { Refusal } from "../../design/document";
import type { Show } from "../../design/show";

export const APP_NAME = "coilwright";
export const ENVELOPE_VERSION = 1;

export interface Envelope {
  app: typeof APP_NAME;
  version: number;
  /** incremented with each save of any tab */
  revision: number;
  /** ISO 8601 */
  savedAt: string;
  /** id of the page that wrote it, new at each start; absent from builds before the journal */
  writer?: string;
  /** newest record of the journal that it follows; null if the journal was not available */
  follows?: number | null;
  show: unknown;
}

/** The fields of an envelope before its show. */
export interface EnvelopeHead {
  revision: number;
  writer: string | null;
  follows: number | null;
}

/** The fields of an envelope that this page writes. */
export interface EnvelopeMark {
  revision: number;
  savedAt: Date;
  writer: string;
  follows: number | null;
}

export type LoadedShow =
  | { kind: "nothing" }
  | { kind: "ok"; show: Show; revision: number; savedAt: string }
  | { kind: "not ours"; sentence: string }
  | { kind: "corrupt"; sentence: string }
  | { kind: "too new"; sentence: string }
  | { kind: "invalid"; sentence: string; faults: readonly string[] };

/** Reads a show from plain data, with its migrations. */
export type ReadShow = (value: unknown) => { ok: true; show: Show } | Refusal;

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function parsed(text: string): { value: unknown } | null {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return null;
  }
}

function isCount(value: unknown): value is number {
  return typeof value === "number" && Number.isInteger(value) && value >= 0;
}

const NOT_OURS: LoadedShow = {
  kind: "not ours",
  sentence: "The data stored for this app in the browser were not written by it.",
};
const CORRUPT: LoadedShow = {
  kind: "corrupt",
  sentence: "The stored show is damaged and cannot be read.",
};
const TOO_NEW: LoadedShow = {
  kind: "too new",
  sentence:
    "The stored show was saved by a newer version of this app. It stays unchanged, and nothing is saved until you " +
    "reload with that version or choose “Start again”, which backs it up.",
};

function readEnvelope(envelope: Record<string, unknown>, readShow: ReadShow): LoadedShow {
  const { version, revision, savedAt, show } = envelope;
  if (!isCount(version) || !isCount(revision)) return CORRUPT;
  if (version > ENVELOPE_VERSION) return TOO_NEW;
  const result = readShow(show);
  if (result.ok) return { kind: "ok", show: result.show, revision, savedAt: String(savedAt) };
  if (result.kind === "too-new") return TOO_NEW;
  return {
    kind: "invalid",
    sentence: "The stored show has faults and cannot be opened.",
    faults: result.faults.map((fault) => fault.message),
  };
}

/** Reads the text of an envelope; `null` if nothing is stored yet. */
export function readKeptText(text: string | null, readShow: ReadShow): LoadedShow {
  if (text === null) return { kind: "nothing" };
  const result = parsed(text);
  if (!result) return CORRUPT;
  if (!isObject(result.value) || result.value.app !== APP_NAME) return NOT_OURS;
  return readEnvelope(result.value, readShow);
}

/** The start of every envelope written by a build of this app. */
const HEAD =
  /^\{"app":"coilwright","version":\d+,"revision":(\d+),"savedAt":"[^"]*"(?:,"writer":"([^"]*)","follows":(\d+|null))?,"show":/;

/** The head of an envelope, without parsing the text, whatever its length; null if it is not this app's. */
export function envelopeHead(text: string): EnvelopeHead | null {
  const found = HEAD.exec(text);
  if (!found) return null;
  const [, revision, writer, follows] = found;
  return {
    revision: Number(revision),
    writer: writer ?? null,
    follows: follows === undefined || follows === "null" ? null : Number(follows),
  };
}

/** The text of an envelope around a show. */
export function keptText(show: Show, { revision, savedAt, writer, follows }: EnvelopeMark): string {
  const envelope: Envelope = {
    app: APP_NAME,
    version: ENVELOPE_VERSION,
    revision,
    savedAt: savedAt.toISOString(),
    writer,
    follows,
    show,
  };
  return JSON.stringify(envelope);
}
