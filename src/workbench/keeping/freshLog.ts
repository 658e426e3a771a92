/**
 * Has the browser go on in a new file, so that what a crash has left half written harms nothing that follows.
 * Without a library, because the page's entry calls it before anything else is there.
 */
import { FRESH_LOG_DATABASE } from "./storageKeys";

function answered(request: IDBRequest): Promise<void> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error);
  });
}

async function turnOver(): Promise<void> {
  const opening = indexedDB.open(FRESH_LOG_DATABASE);
  await answered(opening);
  opening.result.close();
  await answered(indexedDB.deleteDatabase(FRESH_LOG_DATABASE));
}

/**
 * Chromium keeps all databases of a page in one log. A crash in the midst of a write leaves half a record at its end;
 * the next start reads past it and writes on behind it; the start after the next crash takes the half record for
 * damage and deletes every database of the page. Deleting a database makes it put what it holds into a new file and
 * begin a new log. Other browsers lose nothing by it. Nobody waits for it: what such a start deletes even so comes
 * back from the second place.
 * Answers when that is done or refused; never rejects.
 */
export function freshLog(): Promise<void> {
  return turnOver().catch(() => undefined);
}
