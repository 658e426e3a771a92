/** Reads what the browser keeps for this page, as it is and whatever it is; nothing is changed, nothing throws. */

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

/** ms; a database that another page holds shut is passed over */
const PATIENCE = 4000;

/** Our entries in local storage. */
export function readEntries(): KeptEntry[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(PREFIX))
      .map((key) => ({ key, text: localStorage.getItem(key) ?? "" }));
  } catch {
    return [];
  }
}

/** What an asynchronous call gives, or null where it fails or does not answer. */
export function patiently<Value>(value: Promise<Value>): Promise<Value | null> {
  const tooLate = new Promise<null>((resolve) => setTimeout(() => resolve(null), PATIENCE));
  return Promise.race([value.catch(() => null), tooLate]);
}

export function answer<Value>(request: IDBRequest<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** A database that is there; one that is not is not made. */
export async function openThere(name: string): Promise<IDBDatabase> {
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

/** Every store of a database; empty where there is none or it cannot be read. */
export async function readDatabase(name: string): Promise<KeptStore[]> {
  const read = async () => {
    const database = await openThere(name);
    try {
      const names = Array.from(database.objectStoreNames);
      return await Promise.all(names.map((store) => readStore(database, store)));
    } finally {
      database.close();
    }
  };
  return (await patiently(read())) ?? [];
}

/** Names of our databases: those that are known, and others that are there under our prefix. */
export async function databaseNames(known: readonly string[]): Promise<string[]> {
  const there = (await patiently((async () => indexedDB.databases())())) ?? [];
  const ours = there.flatMap(({ name }) => (name?.startsWith(PREFIX) ? [name] : []));
  return [...new Set([...known, ...ours])];
}
