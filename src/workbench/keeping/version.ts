/** Dated versions of designs and shows. */

export type VersionKind = "show" | "design";

/** The place of a deleted design in its show, for restoring it. */
export interface Seat {
  /** place in the list, from 0 */
  index: number;
  side: "left" | "right" | null;
  /** id of the design that replaced it as the left coil; null if none did */
  taker: string | null;
  /** whether that design was the right coil before */
  fromRight: boolean;
}

/** What there is to know of a version without its text. */
export interface VersionSummary {
  id: string;
  kind: VersionKind;
  /** of the design in its show; null for a show */
  designId: string | null;
  title: string;
  /** ISO 8601 */
  at: string;
  /** why it was saved, such as “before “load the example”” */
  cause: string;
  /** whether it is in the bin: deleted or replaced */
  binned: boolean;
  /** whether it was saved periodically, and is removed first with age */
  periodic: boolean;
  /** whether to offer it at the next start, as work that was not opened there */
  offered: boolean;
  /** bytes in the database, at most */
  size: number;
}

/** A version as stored. */
export interface KeptVersion {
  id: string;
  kind: VersionKind;
  designId: string | null;
  title: string;
  at: string;
  cause: string;
  binned: boolean;
  /** only for a design that was deleted from its show */
  seat?: Seat;
  /** the document as in its file, or unreadable text unchanged */
  text: string;
}

/** A version to be stored. */
export interface NewVersion extends KeptVersion {
  periodic: boolean;
  offered: boolean;
}

/** Bytes of a text in a browser's database, at most: two per character. */
export function sizeOf(text: string): number {
  return 2 * text.length;
}

/** The two records of a version: complete, and without its text. */
export function recordsOf({ periodic, offered, ...version }: NewVersion): {
  version: KeptVersion;
  summary: VersionSummary;
} {
  const { text, seat: _seat, ...known } = version;
  return { version, summary: { ...known, periodic, offered, size: sizeOf(text) } };
}

function textOr(value: unknown, fallback: string): string {
  return typeof value === "string" ? value : fallback;
}

const LONG_AGO = new Date(0).toISOString();

function dateOr(value: unknown, fallback: string): string {
  return typeof value === "string" && Number.isFinite(Date.parse(value)) ? value : fallback;
}

/** The seat in stored data; undefined if there is none. */
function seatFound(found: unknown): Seat | undefined {
  if (typeof found !== "object" || found === null) return undefined;
  const { index, side, taker, fromRight } = found as Record<string, unknown>;
  if (typeof index !== "number" || !Number.isInteger(index)) return undefined;
  return {
    index: Math.max(0, index),
    side: side === "left" || side === "right" ? side : null,
    taker: typeof taker === "string" ? taker : null,
    fromRight: fromRight === true,
  };
}

/** The version in stored data, whatever wrote them. */
export function versionFound(id: string, found: unknown): NewVersion {
  const { kind, designId, title, at, cause, binned, seat, text } = (found ?? {}) as Record<string, unknown>;
  return {
    id,
    kind: kind === "design" ? "design" : "show",
    designId: typeof designId === "string" ? designId : null,
    title: textOr(title, "Untitled"),
    at: dateOr(at, LONG_AGO),
    cause: textOr(cause, "found in this browser"),
    binned: binned === true,
    periodic: false,
    offered: false,
    seat: seatFound(seat),
    text: textOr(text, JSON.stringify(text ?? null)),
  };
}

/** The version in a copy, with the additional fields of its summary. */
export function newVersionFound(id: string, found: unknown): NewVersion {
  const { periodic, offered } = (found ?? {}) as Record<string, unknown>;
  return { ...versionFound(id, found), periodic: periodic === true, offered: offered === true };
}
