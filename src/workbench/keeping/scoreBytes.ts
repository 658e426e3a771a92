/** Bytes of scores, stored in the browser's database; if it refuses, in memory until the page is closed. */
import type { DBSchema, IDBPDatabase } from "idb";
import { newListeners } from "../background/listeners";
import { newConnection } from "./databaseOpening";
import { secondPlace } from "./secondPlace";
import { isQuotaError } from "./storageError";
import { BYTES_STORE, SCORE_PREFIX, SCORES_DATABASE, SCORES_DATABASE_VERSION } from "./storageKeys";

interface Schema extends DBSchema {
  [BYTES_STORE]: { key: string; value: Uint8Array };
}

const memory = new Map<string, Uint8Array>();
const second = secondPlace();
const refusals = newListeners<string>();
const connection = newConnection<Schema>({
  name: SCORES_DATABASE,
  version: SCORES_DATABASE_VERSION,
  stores: [BYTES_STORE],
  create: (database, store) => database.createObjectStore(store),
});

function refusalSentence(error: unknown): string {
  const why = isQuotaError(error)
    ? "its storage for this page is full"
    : "its database refuses or does not respond";
  return (
    `The browser could not store the score's file (${why}): its notes are lost when the page is closed. ` +
    "Export the show, which includes them, or keep the file."
  );
}

async function put(database: IDBPDatabase<Schema>, key: string, bytes: Uint8Array): Promise<void> {
  const transaction = database.transaction(BYTES_STORE, "readwrite", { durability: "strict" });
  const [done] = await Promise.allSettled([transaction.done, transaction.store.put(bytes, key)]);
  if (done.status === "rejected") throw done.reason;
}

/** Stores bytes under a key. Never rejects: if they last only until the page is closed, listeners are called. */
export async function keepBytes(key: string, bytes: Uint8Array): Promise<void> {
  memory.set(key, bytes);
  try {
    await connection.use((database) => put(database, key, bytes));
    await second.put(`${SCORE_PREFIX}${key}`, bytes);
  } catch (error) {
    refusals.tell(refusalSentence(error));
  }
}

/** Calls back with a sentence whenever bytes could not be stored. Returns the unsubscribe function. */
export function listenForRefusedBytes(listener: (sentence: string) => void): () => void {
  return refusals.listen(listener);
}

async function bytesInDatabase(key: string): Promise<Uint8Array | null> {
  try {
    const found: unknown = await connection.use((database) => database.get(BYTES_STORE, key));
    return found instanceof Uint8Array ? found : null;
  } catch {
    return null;
  }
}

async function copiedBytes(key: string): Promise<Uint8Array | null> {
  const copy = await second.read(`${SCORE_PREFIX}${key}`);
  return copy && new Uint8Array(await copy.arrayBuffer());
}

/** The bytes under a key, null if there are none; bytes that one of the two places has lost are restored. Never rejects. */
export async function keptBytes(key: string): Promise<Uint8Array | null> {
  const remembered = memory.get(key);
  if (remembered) return remembered;
  const [own, copy] = await Promise.all([bytesInDatabase(key), copiedBytes(key)]);
  if (own && !copy) void second.put(`${SCORE_PREFIX}${key}`, own);
  if (copy && !own) connection.use((database) => put(database, key, copy)).catch(() => undefined);
  return own ?? copy;
}
