/** Has the browser go on in a new file, so that what a crash has left half written harms nothing that follows. */
import { deleteDB, openDB } from "idb";
import { FRESH_LOG_DATABASE } from "./storageKeys";
import { within } from "./within";

/** ms; a browser that takes longer is not waited for */
const PATIENCE = 1000;

/**
 * Chromium keeps all databases of a page in one log. A crash in the midst of a write leaves half a record at its end;
 * the next start reads past it and writes on behind it; the start after the next crash takes the half record for
 * damage and deletes every database of the page. Deleting a database makes it put what it holds into a new file and
 * begin a new log. Other browsers lose nothing by it.
 * Answers when that is done, refused or taking too long; never rejects.
 */
export async function freshLog(): Promise<void> {
  const turnOver = async () => {
    (await openDB(FRESH_LOG_DATABASE, 1)).close();
    await deleteDB(FRESH_LOG_DATABASE);
  };
  await within(PATIENCE, turnOver()).catch(() => undefined);
}
