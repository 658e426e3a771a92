/** What a dated version is. */

export type VersionKind = "show" | "design";

/** Where a design was in its show, for when it comes back. */
export interface Seat {
  /** place in the list, from 0 */
  index: number;
  side: "left" | "right" | null;
  /** id of the design that was made the left coil in its place; null where none was */
  taker: string | null;
  /** whether that one was the right coil before */
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
  /** why it was kept, as in “before “load the example”” */
  cause: string;
  /** whether it lies in the bin: deleted or replaced */
  binned: boolean;
  /** whether it is made by the clock alone, and may be thinned with age first */
  periodic: boolean;
  /** whether it still has to be offered at the next start: work that was never on the board there */
  offered: boolean;
  /** bytes at most, as it lies in the database */
  size: number;
}

/** A version as it is kept. */
export interface KeptVersion {
  id: string;
  kind: VersionKind;
  designId: string | null;
  title: string;
  at: string;
  cause: string;
  binned: boolean;
  /** of a design that was taken out of its show */
  seat?: Seat;
  /** the document as its file would be; what could not be read, as it was found */
  text: string;
}

/** A version on its way into the database. */
export interface NewVersion extends KeptVersion {
  periodic: boolean;
  offered: boolean;
}

/** Bytes of a text as browsers keep it, at most: two a character. */
export function sizeOf(text: string): number {
  return 2 * text.length;
}

/** The two records of a version: whole, and without its text. */
export function recordsOf({ periodic, offered, ...version }: NewVersion): {
  version: KeptVersion;
  summary: VersionSummary;
} {
  const { text, seat: _seat, ...known } = version;
  return { version, summary: { ...known, periodic, offered, size: sizeOf(text) } };
}

function textOr(value: unknown, instead: string): string {
  return typeof value === "string" ? value : instead;
}

const LONG_AGO = new Date(0).toISOString();

function dateOr(value: unknown, instead: string): string {
  return typeof value === "string" && Number.isFinite(Date.parse(value)) ? value : instead;
}

/** A seat out of what was found; undefined where it is none. */
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

/** A version out of what was found under an id, whoever wrote it there. */
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

/** A version out of what was found of one on its way, marks included. */
export function newVersionFound(id: string, found: unknown): NewVersion {
  const { periodic, offered } = (found ?? {}) as Record<string, unknown>;
  return { ...versionFound(id, found), periodic: periodic === true, offered: offered === true };
}
