/** Every store of this program's databases, completed from the copies in the cache storage. */
import { secondPlace } from "../../workbench/keeping/secondPlace";
import {
  BYTES_STORE,
  JOURNAL_STORE,
  KEEPING_DATABASE,
  RECORD_PREFIX,
  SCORE_PREFIX,
  SCORES_DATABASE,
  VERSION_PREFIX,
  VERSIONS_STORE,
} from "../../workbench/keeping/storageKeys";
import { databaseNames, type KeptStore, readDatabase } from "./readKept";

/** The stores that are copied, by the prefix of the copies' names. */
const COPIED = [
  { prefix: RECORD_PREFIX, database: KEEPING_DATABASE, store: JOURNAL_STORE },
  { prefix: VERSION_PREFIX, database: KEEPING_DATABASE, store: VERSIONS_STORE },
  { prefix: SCORE_PREFIX, database: SCORES_DATABASE, store: BYTES_STORE },
];

async function readBody(body: Blob, isBytes: boolean): Promise<unknown> {
  if (isBytes) return new Uint8Array(await body.arrayBuffer());
  const text = await body.text();
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

/** The copies, as the stores from which they were made. */
async function readCopies(): Promise<KeptStore[]> {
  const second = secondPlace();
  const names = await second.names();
  return Promise.all(
    COPIED.map(async ({ prefix, database, store }) => {
      const own = names.filter((name) => name.startsWith(prefix));
      const records = own.map(async (name) => {
        const body = await second.read(name);
        return {
          key: name.slice(prefix.length),
          value: body && (await readBody(body, prefix === SCORE_PREFIX)),
        };
      });
      return { database, store, records: await Promise.all(records) };
    }),
  );
}

function isSame(one: KeptStore, other: KeptStore): boolean {
  return one.database === other.database && one.store === other.store;
}

/** A store with the records that only its copy still has. */
function withCopiedRecords(store: KeptStore, copies: readonly KeptStore[]): KeptStore {
  const keys = new Set(store.records.map(({ key }) => String(key)));
  const copied = copies
    .filter((copy) => isSame(copy, store))
    .flatMap(({ records }) => records.filter(({ key }) => !keys.has(String(key))));
  return { ...store, records: [...store.records, ...copied] };
}

/** Every store of this program's databases, each record once; unreadable ones are left out. Never rejects. */
export async function readStores(): Promise<KeptStore[]> {
  const names = await databaseNames([KEEPING_DATABASE, SCORES_DATABASE]);
  const [stores, copies] = await Promise.all([Promise.all(names.map(readDatabase)), readCopies()]);
  const there = stores.flat();
  const gone = copies.filter(
    (copy) => copy.records.length > 0 && !there.some((store) => isSame(store, copy)),
  );
  return [...there.map((store) => withCopiedRecords(store, copies)), ...gone];
}
