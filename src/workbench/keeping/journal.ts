/** The journal: the newest states of the show, one record per save. */

export interface JournalRecord {
  /** a positive integer, incremented with each save of any tab */
  revision: number;
  /** the same envelope as in local storage */
  text: string;
}

/** Number of records for a show of usual size. */
const MOST_RECORDS = 20;
/** Minimum number of records, however large the show is. */
const FEWEST_RECORDS = 3;
/** characters in the journal, unless it has the minimum number of records */
const BUDGET = 4_000_000;

/** Safe to increment; no session comes near it. */
const HIGHEST_REVISION = 2 ** 52;

/** The number of records of a given length that the journal keeps. */
export function recordsKept(length: number): number {
  return Math.max(FEWEST_RECORDS, Math.min(MOST_RECORDS, Math.floor(BUDGET / Math.max(1, length))));
}

/** Whether a value is a valid revision; foreign data in the journal may be anything. */
export function isRevision(value: unknown): value is number {
  return typeof value === "number" && Number.isInteger(value) && value > 0 && value < HIGHEST_REVISION;
}

/** The keys to delete when a record of that length is written: invalid ones, and the oldest. */
export function prunedKeys<Key>(keys: readonly Key[], length: number): Key[] {
  const revisions = keys.filter((key): key is Key & number => isRevision(key));
  const foreign = keys.filter((key) => !isRevision(key));
  const newestFirst = revisions.sort((a, b) => b - a);
  return [...foreign, ...newestFirst.slice(recordsKept(length) - 1)];
}

/** The valid records among the journal's entries, newest first. */
export function readableRecords(found: readonly unknown[]): JournalRecord[] {
  return found
    .filter((record): record is JournalRecord => {
      const { revision, text } = (record ?? {}) as Record<string, unknown>;
      return isRevision(revision) && typeof text === "string";
    })
    .sort((a, b) => b.revision - a.revision);
}
