/** Reads the newest show in a file of all stored data, as exported by the safe page. */
import { parseShow } from "../../design/show";
import { readableRecords } from "./journal";
import { APP_NAME, type LoadedShow } from "./loadedShow";
import { resolveKept } from "./resolve";
import { JOURNAL_STORE, SHOW_KEY } from "./storageKeys";

type Parts = Record<string, unknown>;

function isParts(value: unknown): value is Parts {
  return typeof value === "object" && value !== null;
}

/** The journal's entries, unvalidated. */
function journalIn(databases: unknown): unknown[] {
  const stores = Array.isArray(databases) ? databases.filter(isParts) : [];
  return stores
    .filter(({ store }) => store === JOURNAL_STORE)
    .flatMap(({ records }) => (Array.isArray(records) ? records.filter(isParts) : []))
    .map(({ value }) => value);
}

/** The newest readable show of such a file, or why there is none; null if it is another kind of file. */
export function showInRescue(json: unknown): LoadedShow | null {
  if (!isParts(json) || json.app !== APP_NAME || !isParts(json.localStorage)) return null;
  const local = json.localStorage[SHOW_KEY];
  const records = readableRecords(journalIn(json.databases));
  return resolveKept(typeof local === "string" ? local : null, records, parseShow).loaded;
}
