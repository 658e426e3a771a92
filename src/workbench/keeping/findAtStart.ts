/** Reads the browser's database when the page starts; a database that hangs does not block the start. */
import { idbKeeping } from "./idbKeeping";
import type { JournalRecord } from "./journal";
import type { KeepingDatabase } from "./keepingDatabase";
import { keptTwice } from "./keptTwice";
import { secondPlace } from "./secondPlace";
import { Unanswered, within } from "./within";

/** ms that the start waits for the database, which can be slow to open after a crash */
const START_TIMEOUT = 5_000;

export interface FoundAtStart {
  /** null if the browser has none */
  database: KeepingDatabase | null;
  /** newest first; null if the journal could not be read */
  records: readonly JournalRecord[] | null;
  /** what is wrong with the database; null if nothing is */
  trouble: string | null;
}

const CONSEQUENCE =
  "The show is stored in the browser's local storage only: if the browser crashes, the last edits may be lost, " +
  "and no earlier versions are saved. Export the show as a backup.";

/** Why there are no versions without a database. */
export const NO_VERSIONS =
  "This browser provides no database, so no earlier versions are saved: export designs as a backup.";

/** Why the show is in local storage only without a database. */
export const NO_DATABASE = `This browser provides no database. ${CONSEQUENCE}`;
const SILENT = `The browser's database does not respond; closing other tabs of this page and reloading may help. ${CONSEQUENCE}`;
const REFUSED = `The browser denies this page access to its database (private window or blocked storage). ${CONSEQUENCE}`;

/** The sentence for a database that fails. */
export function databaseTrouble(error: unknown): string {
  return error instanceof Unanswered ? SILENT : REFUSED;
}

function hasDatabase(): boolean {
  try {
    return typeof indexedDB === "object" && indexedDB !== null;
  } catch {
    return false;
  }
}

/** The result without a database. */
export const NOTHING_FOUND: FoundAtStart = { database: null, records: null, trouble: NO_DATABASE };

/** Reads the journal, within five seconds; never throws. */
export async function findAtStart(): Promise<FoundAtStart> {
  if (!hasDatabase()) return NOTHING_FOUND;
  const database = keptTwice(idbKeeping(), secondPlace());
  try {
    const records = await within(START_TIMEOUT, database.readJournal());
    return { database, records, trouble: null };
  } catch (error) {
    return { database, records: null, trouble: databaseTrouble(error) };
  }
}
