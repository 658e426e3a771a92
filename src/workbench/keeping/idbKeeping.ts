/** The database of show and versions, on IndexedDB. */
import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from "idb";
import { newListeners } from "../background/listeners";
import { type DatabasePlan, newConnection } from "./databaseOpening";
import { isRevision, type JournalRecord, prunedKeys, readableRecords } from "./journal";
import type { JournalOutcome, JournalWrite, KeepingDatabase } from "./keepingDatabase";
import {
  JOURNAL_STORE,
  KEEPING_DATABASE,
  KEEPING_DATABASE_VERSION,
  SUMMARIES_STORE,
  VERSIONS_STORE,
} from "./storageKeys";
import { type KeptVersion, type NewVersion, recordsOf, type VersionSummary, versionFound } from "./version";

interface Schema extends DBSchema {
  [JOURNAL_STORE]: { key: number; value: JournalRecord };
  [VERSIONS_STORE]: { key: string; value: KeptVersion };
  [SUMMARIES_STORE]: { key: string; value: VersionSummary };
}

type Store = StoreNames<Schema>;
type Writing = IDBPTransaction<Schema, Store[], "readwrite">;

const PLAN: DatabasePlan<Schema> = {
  name: KEEPING_DATABASE,
  version: KEEPING_DATABASE_VERSION,
  stores: [JOURNAL_STORE, VERSIONS_STORE, SUMMARIES_STORE],
  create(database, store) {
    database.createObjectStore(store, { keyPath: store === JOURNAL_STORE ? "revision" : "id" });
  },
};

const VERSION_STORES: Store[] = [VERSIONS_STORE, SUMMARIES_STORE];

/** Runs a write and waits until it is on disk. A failed request aborts the transaction, which gives the reason. */
async function written<Value>(
  database: IDBPDatabase<Schema>,
  stores: Store[],
  write: (transaction: Writing) => Promise<Value>,
): Promise<Value> {
  const transaction = database.transaction(stores, "readwrite", { durability: "strict" });
  const [done, value] = await Promise.allSettled([transaction.done, write(transaction)]);
  if (done.status === "rejected") throw done.reason;
  if (value.status === "rejected") throw value.reason;
  return value.value;
}

/** A read transaction; if it is aborted, its requests report that. */
function reading(database: IDBPDatabase<Schema>, stores: Store[]) {
  const transaction = database.transaction(stores);
  transaction.done.catch(() => undefined);
  return transaction;
}

async function putVersions(transaction: Writing, versions: readonly NewVersion[]): Promise<void> {
  await Promise.all(
    versions
      .map(recordsOf)
      .flatMap(({ version, summary }) => [
        transaction.objectStore(VERSIONS_STORE).put(version),
        transaction.objectStore(SUMMARIES_STORE).put(summary),
      ]),
  );
}

async function putRecord(
  transaction: Writing,
  { record, base, follows, versions }: JournalWrite,
): Promise<JournalOutcome> {
  const journal = transaction.objectStore(JOURNAL_STORE);
  const keys = await journal.getAllKeys();
  const newest = Math.max(0, ...keys.filter(isRevision));
  if (newest > follows) {
    const head = await journal.get(newest);
    if (head) return { kind: "conflict", head };
  }
  const pruned = prunedKeys(keys, record.text.length);
  await Promise.all([
    ...(base ? [journal.put(base)] : []),
    journal.put(record),
    ...pruned.map((key) => journal.delete(key)),
    putVersions(transaction, versions),
  ]);
  return { kind: "written" };
}

/**
 * Every version's summary; a missing one is made from the version itself.
 * @param made summaries made so far, so that each such version is read once
 */
async function summariesOf(
  database: IDBPDatabase<Schema>,
  made: Map<string, VersionSummary>,
): Promise<VersionSummary[]> {
  const transaction = reading(database, VERSION_STORES);
  const versions = transaction.objectStore(VERSIONS_STORE);
  const [ids, summaries] = await Promise.all([
    versions.getAllKeys(),
    transaction.objectStore(SUMMARIES_STORE).getAll(),
  ]);
  const known = new Map([...made, ...summaries.map((summary) => [summary.id, summary] as const)]);
  const missing = ids.filter((id) => !known.has(id));
  await Promise.all(
    missing.map(async (id) => made.set(id, recordsOf(versionFound(id, await versions.get(id))).summary)),
  );
  return ids.flatMap((id) => known.get(id) ?? made.get(id) ?? []);
}

async function readVersion(database: IDBPDatabase<Schema>, id: string): Promise<KeptVersion | null> {
  const versions = reading(database, [VERSIONS_STORE]).objectStore(VERSIONS_STORE);
  const found: unknown = await versions.get(id);
  return found === undefined ? null : recordsOf(versionFound(id, found)).version;
}

/** Creates the database, which is opened at its first use. */
export function idbKeeping(): KeepingDatabase {
  const losses = newListeners<void>();
  const made = new Map<string, VersionSummary>();
  const { use } = newConnection(PLAN, () => losses.tell());
  return {
    readJournal: () =>
      use(async (database) => {
        const journal = reading(database, [JOURNAL_STORE]).objectStore(JOURNAL_STORE);
        return readableRecords(await journal.getAll());
      }),
    writeJournal: (write) =>
      use((database) => {
        const stores = write.versions.length > 0 ? [JOURNAL_STORE, ...VERSION_STORES] : [JOURNAL_STORE];
        return written(database, stores as Store[], (transaction) => putRecord(transaction, write));
      }),
    keepVersions: (versions) =>
      use((database) =>
        written(database, VERSION_STORES, (transaction) => putVersions(transaction, versions)),
      ),
    listVersions: () => use((database) => summariesOf(database, made)),
    readVersion: (id) => use((database) => readVersion(database, id)),
    removeVersions: (ids) =>
      use((database) =>
        written(database, VERSION_STORES, async (transaction) => {
          const deletions = ids.flatMap((id) => [
            transaction.objectStore(VERSIONS_STORE).delete(id),
            transaction.objectStore(SUMMARIES_STORE).delete(id),
          ]);
          await Promise.all(deletions);
        }),
      ),
    endOffer: (id) =>
      use((database) =>
        written(database, [SUMMARIES_STORE], async (transaction) => {
          const summaries = transaction.objectStore(SUMMARIES_STORE);
          const summary = await summaries.get(id);
          if (summary) await summaries.put({ ...summary, offered: false });
        }),
      ),
    listenForLoss: losses.listen,
  };
}
