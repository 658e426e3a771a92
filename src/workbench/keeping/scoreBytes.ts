/** Bytes of scores, kept in the browser's database; in memory where there is none. */
import { BYTES_STORE, SCORES_DATABASE, SCORES_DATABASE_VERSION } from "./storageKeys";

const memory = new Map<string, Uint8Array>();

function answer<Value>(request: IDBRequest<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

async function inStore<Value>(mode: IDBTransactionMode, use: (store: IDBObjectStore) => IDBRequest<Value>) {
  const opening = indexedDB.open(SCORES_DATABASE, SCORES_DATABASE_VERSION);
  opening.onupgradeneeded = () => opening.result.createObjectStore(BYTES_STORE);
  const database = await answer(opening);
  try {
    return await answer(use(database.transaction(BYTES_STORE, mode).objectStore(BYTES_STORE)));
  } finally {
    database.close();
  }
}

/** Keeps bytes under a key; never throws. */
export async function keepBytes(key: string, bytes: Uint8Array): Promise<void> {
  memory.set(key, bytes);
  try {
    await inStore("readwrite", (store) => store.put(bytes, key));
  } catch {
    // no database here: they last as long as the page
  }
}

/** The bytes under a key, null where there are none; never throws. */
export async function keptBytes(key: string): Promise<Uint8Array | null> {
  const remembered = memory.get(key);
  if (remembered) return remembered;
  try {
    const found: unknown = await inStore("readonly", (store) => store.get(key));
    return found instanceof Uint8Array ? found : null;
  } catch {
    return null;
  }
}
