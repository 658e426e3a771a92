/** The file of everything that was kept, as the safe page gives it out, read again: its newest show. */
import { parseShow } from "../../design/show";
import { readableRecords } from "./journal";
import { APP_NAME, type LoadedShow } from "./loadedShow";
import { resolveKept } from "./resolve";
import { JOURNAL_STORE, SHOW_KEY } from "./storageKeys";

type Parts = Record<string, unknown>;

function isParts(value: unknown): value is Parts {
  return typeof value === "object" && value !== null;
}

/** What the journal held, whatever the file says that it was. */
function journalIn(databases: unknown): unknown[] {
  const stores = Array.isArray(databases) ? databases.filter(isParts) : [];
  return stores
    .filter(({ store }) => store === JOURNAL_STORE)
    .flatMap(({ records }) => (Array.isArray(records) ? records.filter(isParts) : []))
    .map(({ value }) => value);
}

/** The newest show of such a file that can be read, or why there is none; null where it is another file. */
export function showInRescue(json: unknown): LoadedShow | null {
  if (!isParts(json) || json.app !== APP_NAME || !isParts(json.localStorage)) return null;
  const local = json.localStorage[SHOW_KEY];
  const records = readableRecords(journalIn(json.databases));
  return resolveKept(typeof local === "string" ? local : null, records, parseShow).loaded;
}
