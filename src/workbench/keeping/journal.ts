/** The journal: the newest states of the show, one record each committed edit that was saved. */

export interface JournalRecord {
  /** whole and positive; one higher with each save, whichever tab saved */
  revision: number;
  /** the envelope that local storage holds for the same state */
  text: string;
}

/** Records that are kept of a show of usual size. */
const MOST_RECORDS = 20;
/** Records that are kept however large the show is. */
const FEWEST_RECORDS = 3;
/** characters that the journal may come to with more than the fewest records */
const ROOM = 4_000_000;

/** Beyond it nothing could be counted on; no session comes near. */
const HIGHEST_REVISION = 2 ** 52;

/** How many records of a text's length the journal keeps. */
export function recordsKept(length: number): number {
  return Math.max(FEWEST_RECORDS, Math.min(MOST_RECORDS, Math.floor(ROOM / Math.max(1, length))));
}

/** Whether a value can be the revision of a record; what is foreign in the journal may be anything. */
export function isRevision(value: unknown): value is number {
  return typeof value === "number" && Number.isInteger(value) && value > 0 && value < HIGHEST_REVISION;
}

/** The keys to be deleted with a record of that length: what is no revision, and the oldest. */
export function prunedKeys<Key>(keys: readonly Key[], length: number): Key[] {
  const revisions = keys.filter((key): key is Key & number => isRevision(key));
  const foreign = keys.filter((key) => !isRevision(key));
  const newestFirst = revisions.sort((a, b) => b - a);
  return [...foreign, ...newestFirst.slice(recordsKept(length) - 1)];
}

/** What is found in the store of the journal and is a record, newest first. */
export function readableRecords(found: readonly unknown[]): JournalRecord[] {
  return found
    .filter((record): record is JournalRecord => {
      const { revision, text } = (record ?? {}) as Record<string, unknown>;
      return isRevision(revision) && typeof text === "string";
    })
    .sort((a, b) => b.revision - a.revision);
}
