/**
 * Makes the browser start a new log file, so that a record half written in a crash damages nothing later.
 * Uses no library, because the page's entry calls it before anything else is loaded.
 */
import { FRESH_LOG_DATABASE } from "./storageKeys";

function answered(request: IDBRequest): Promise<void> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error);
  });
}

async function startNewLog(): Promise<void> {
  const opening = indexedDB.open(FRESH_LOG_DATABASE);
  await answered(opening);
  opening.result.close();
  await answered(indexedDB.deleteDatabase(FRESH_LOG_DATABASE));
}

/**
 * Chromium keeps all databases of a page in one log. A crash during a write leaves half a record at its end; the
 * next start skips it and appends after it; the start after another crash takes the half record for damage and
 * deletes every database of the page. Deleting a database makes Chromium compact the log into a new file. In other
 * browsers it does no harm. Nothing waits for it: data that are deleted nevertheless are restored from the second
 * place.
 * Resolves when that is done or refused; never rejects.
 */
export function freshLog(): Promise<void> {
  return startNewLog().catch(() => undefined);
}
