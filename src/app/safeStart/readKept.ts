/** Reads the page's data in the browser in whatever state; changes nothing and never throws. */

export interface KeptEntry {
  key: string;
  text: string;
}

export interface KeptStore {
  database: string;
  store: string;
  records: readonly { key: unknown; value: unknown }[];
}

const PREFIX = "coilwright/";

/** ms; a database that another page blocks is skipped */
const TIMEOUT = 4000;

/** This program's entries in local storage. */
export function readEntries(): KeptEntry[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(PREFIX))
      .map((key) => ({ key, text: localStorage.getItem(key) ?? "" }));
  } catch {
    return [];
  }
}

/** The result of an asynchronous call; null if it fails or times out. */
export function withTimeout<Value>(value: Promise<Value>): Promise<Value | null> {
  const timedOut = new Promise<null>((resolve) => setTimeout(() => resolve(null), TIMEOUT));
  return Promise.race([value.catch(() => null), timedOut]);
}

export function answer<Value>(request: IDBRequest<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** Opens an existing database; rejects instead of creating one. */
export async function openExisting(name: string): Promise<IDBDatabase> {
  const opening = indexedDB.open(name);
  opening.onupgradeneeded = () => opening.transaction?.abort();
  return await answer(opening);
}

async function readStore(database: IDBDatabase, store: string): Promise<KeptStore> {
  const all = database.transaction(store).objectStore(store);
  const [keys, values] = await Promise.all([answer(all.getAllKeys()), answer(all.getAll())]);
  return {
    database: database.name,
    store,
    records: keys.map((key, place) => ({ key, value: values[place] as unknown })),
  };
}

/** Every store of a database; empty if there is none or it cannot be read. */
export async function readDatabase(name: string): Promise<KeptStore[]> {
  const read = async () => {
    const database = await openExisting(name);
    try {
      const names = Array.from(database.objectStoreNames);
      return await Promise.all(names.map((store) => readStore(database, store)));
    } finally {
      database.close();
    }
  };
  return (await withTimeout(read())) ?? [];
}

/** Names of this program's databases: the known ones, and others with its prefix. */
export async function databaseNames(known: readonly string[]): Promise<string[]> {
  const existing = (await withTimeout((async () => indexedDB.databases())())) ?? [];
  const ours = existing.flatMap(({ name }) => (name?.startsWith(PREFIX) ? [name] : []));
  return [...new Set([...known, ...ours])];
}
