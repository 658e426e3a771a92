/** What the browser's database holds when the page starts; a database that hangs does not hold it up. */
import { idbKeeping } from "./idbKeeping";
import type { JournalRecord } from "./journal";
import type { KeepingDatabase } from "./keepingDatabase";
import { keptTwice } from "./keptTwice";
import { secondPlace } from "./secondPlace";
import { Unanswered, within } from "./within";

/** ms that the start waits for the database, which a busy machine may take its time to open after a crash */
const START_PATIENCE = 5_000;

export interface FoundAtStart {
  /** null where the browser has none */
  database: KeepingDatabase | null;
  /** newest first; null where the journal could not be read */
  records: readonly JournalRecord[] | null;
  /** what is the matter with the database; null where all is well */
  trouble: string | null;
}

const CONSEQUENCE =
  "The show is kept in the browser's local storage alone: if the browser crashes, the last edits may be lost, " +
  "and no earlier versions are kept. Export the show to be sure.";

/** Why there are no versions where there is no database. */
export const NO_VERSIONS =
  "This browser gives the page no database, so no earlier versions are kept: export designs to keep them.";

/** Why the show is in local storage alone where there is no database. */
export const NO_DATABASE = `This browser gives the page no database. ${CONSEQUENCE}`;
const SILENT = `The browser's database does not answer; closing other tabs of this page and reloading may help. ${CONSEQUENCE}`;
const REFUSED = `The browser refuses its database to this page (private window or blocked storage). ${CONSEQUENCE}`;

/** The sentence for a database that does not do its part. */
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

/** Where there is no database at all. */
export const NOTHING_FOUND: FoundAtStart = { database: null, records: null, trouble: NO_DATABASE };

/** Reads the journal, within five seconds; never throws. */
export async function findAtStart(): Promise<FoundAtStart> {
  if (!hasDatabase()) return NOTHING_FOUND;
  const database = keptTwice(idbKeeping(), secondPlace());
  try {
    const records = await within(START_PATIENCE, database.readJournal());
    return { database, records, trouble: null };
  } catch (error) {
    return { database, records: null, trouble: databaseTrouble(error) };
  }
}
