/** Finds the shows and designs in the stored data. Any record may be damaged; those are skipped. */
import {
  BACKUP_KEYS,
  JOURNAL_STORE,
  KEPT_PREFIX,
  SHOW_KEY,
  VERSIONS_STORE,
} from "../../workbench/keeping/storageKeys";
import type { KeptEntry, KeptStore } from "./readKept";

type Plain = Record<string, unknown>;

export interface KeptDesign {
  id: string;
  title: string;
  document: Plain;
}

export interface KeptVersion {
  /** its source, in a few words */
  origin: string;
  /** ISO 8601; empty if unknown */
  at: string;
  kind: "show" | "design" | "unreadable";
  title: string;
  designs: readonly KeptDesign[];
  /** the show or the design; null where the text cannot be read */
  document: Plain | null;
  /** as stored */
  text: string;
}

function asPlain(value: unknown): Plain | null {
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Plain) : null;
}

function parsed(text: string): Plain | null {
  try {
    return asPlain(JSON.parse(text));
  } catch {
    return null;
  }
}

function textOf(value: unknown, fallback: string): string {
  return typeof value === "string" && value.trim() !== "" ? value.slice(0, 200) : fallback;
}

function timeOf(value: unknown): string {
  return typeof value === "string" && Number.isFinite(Date.parse(value)) ? value : "";
}

function designsOf(show: Plain): KeptDesign[] {
  return Object.entries(asPlain(show.designs) ?? {}).flatMap(([id, value]) => {
    const document = asPlain(value);
    return document ? [{ id, title: textOf(document.title, "Untitled"), document }] : [];
  });
}

type Found = Pick<KeptVersion, "origin" | "at" | "text">;

function showVersion(found: Found, show: Plain, title: unknown): KeptVersion {
  const designs = designsOf(show);
  const name = textOf(show.name ?? title, designs[0]?.title ?? "Untitled show");
  return { ...found, kind: "show", title: name, designs, document: show };
}

function unreadable(found: Found): KeptVersion {
  return { ...found, kind: "unreadable", title: "Cannot be read", designs: [], document: null };
}

/** The version in an envelope of local storage or the journal. */
function versionOfEnvelope(origin: string, text: string, at = ""): KeptVersion {
  const envelope = parsed(text);
  const show = asPlain(envelope?.show);
  const found = { origin, at: timeOf(envelope?.savedAt) || at, text };
  return show ? showVersion(found, show, null) : unreadable(found);
}

/** The version in a record of the versions' store, whose text is a document as in its file. */
function versionOfRecord(value: unknown): KeptVersion[] {
  const record = asPlain(value);
  if (!record || typeof record.text !== "string") return [];
  const origin = `${record.binned === true ? "bin" : "version"}${record.cause ? `, ${textOf(record.cause, "")}` : ""}`;
  const found = { origin, at: timeOf(record.at), text: record.text };
  const document = parsed(record.text);
  if (!document) return [unreadable(found)];
  if (record.kind !== "design") return [showVersion(found, asPlain(document.show) ?? document, record.title)];
  const title = textOf(record.title ?? document.title, "Untitled");
  const id = textOf(record.designId, "kept");
  return [{ ...found, kind: "design", title, designs: [{ id, title, document }], document }];
}

function originOfEntry(key: string): string | null {
  if (key === SHOW_KEY) return "present";
  if ((BACKUP_KEYS as readonly string[]).includes(key)) return "backup";
  return key.startsWith(KEPT_PREFIX) ? "set aside" : null;
}

function records(stores: readonly KeptStore[], name: string): unknown[] {
  return stores
    .filter(({ store }) => store === name)
    .flatMap((store) => store.records.map(({ value }) => value));
}

/** The stored shows and designs, the present one first, then the newest; each text once. */
export function keptVersions(entries: readonly KeptEntry[], stores: readonly KeptStore[]): KeptVersion[] {
  const inStorage = entries.flatMap(({ key, text }) => {
    const origin = originOfEntry(key);
    return origin
      ? [
          versionOfEnvelope(
            origin,
            text,
            key.startsWith(KEPT_PREFIX) ? timeOf(key.slice(KEPT_PREFIX.length)) : "",
          ),
        ]
      : [];
  });
  const inJournal = records(stores, JOURNAL_STORE).flatMap((value) => {
    const text = asPlain(value)?.text;
    return typeof text === "string" ? [versionOfEnvelope("journal", text)] : [];
  });
  const all = [...inStorage, ...inJournal, ...records(stores, VERSIONS_STORE).flatMap(versionOfRecord)];
  const rank = ({ origin, at }: KeptVersion) => (origin === "present" ? "z" : at);
  const sorted = all.sort((a, b) => (rank(a) < rank(b) ? 1 : rank(a) > rank(b) ? -1 : 0));
  return sorted.filter(({ text }, place) => sorted.findIndex((other) => other.text === text) === place);
}

function revisionOf(value: unknown): number {
  return typeof value === "number" && Number.isSafeInteger(value) ? Math.max(0, value) : 0;
}

/** The highest revision of any stored state. */
export function highestRevision(entries: readonly KeptEntry[], stores: readonly KeptStore[]): number {
  const ofEntries = entries.map(({ text }) => revisionOf(parsed(text)?.revision));
  const ofRecords = records(stores, JOURNAL_STORE).map((value) => revisionOf(asPlain(value)?.revision));
  return Math.max(0, ...ofEntries, ...ofRecords);
}
