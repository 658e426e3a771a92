/** Makes an earlier version the present one for the next start; the present one is set aside first. */
import { secondPlace } from "../../workbench/keeping/secondPlace";
import {
  JOURNAL_STORE,
  KEEPING_DATABASE,
  KEPT_PREFIX,
  RECORD_PREFIX,
  SHOW_KEY,
} from "../../workbench/keeping/storageKeys";
import { highestRevision, type KeptVersion, keptVersions } from "./keptVersions";
import { openExisting, readEntries, withTimeout } from "./readKept";
import { readStores } from "./readStores";

type Plain = Record<string, unknown>;

const FULL =
  "The present show could not be backed up, so it was left unchanged: the browser's storage is full or blocked. Export everything, and open the exported show in another browser.";
const NOT_WRITTEN =
  "The version could not be written: the browser's storage is full or blocked. Export it, and open the file in another browser.";

function setAside(at: string): boolean {
  try {
    const present = localStorage.getItem(SHOW_KEY);
    if (present !== null) localStorage.setItem(`${KEPT_PREFIX}${at}`, present);
    return true;
  } catch {
    return false;
  }
}

function toStorage(text: string): boolean {
  try {
    localStorage.setItem(SHOW_KEY, text);
    return true;
  } catch {
    return false;
  }
}

/** Whether the record is on disk. */
async function toJournal(revision: number, text: string): Promise<boolean> {
  const write = async () => {
    const database = await openExisting(KEEPING_DATABASE);
    try {
      const transaction = database.transaction(JOURNAL_STORE, "readwrite", { durability: "strict" });
      transaction.objectStore(JOURNAL_STORE).put({ revision, text });
      await new Promise<void>((resolve, reject) => {
        transaction.oncomplete = () => resolve();
        transaction.onabort = () => reject(transaction.error);
      });
      return true;
    } finally {
      database.close();
    }
  };
  return (await withTimeout(write())) ?? false;
}

/** The present show with a design added and opened; if there is none, a show of the design alone. */
function withDesignAdded(present: Plain | null, design: Plain, id: string): Plain {
  const designs = (present?.designs ?? {}) as Plain;
  const order = Array.isArray(present?.order) ? present.order : [];
  if (!present || order.length === 0)
    return {
      format: "coilwright-show",
      version: 1,
      designs: { [id]: design },
      order: [id],
      open: id,
      left: id,
      right: null,
    };
  return { ...present, designs: { ...designs, [id]: design }, order: [...order, id], open: id };
}

/** @returns why it failed; null if the next start opens the version */
export async function openVersion(version: KeptVersion, now: Date): Promise<string | null> {
  if (!version.document) return "This version cannot be read, so it was not opened: export it instead.";
  const entries = readEntries();
  const stores = await readStores();
  const present = keptVersions(entries, stores).find(({ origin }) => origin === "present")?.document ?? null;
  const revision = highestRevision(entries, stores) + 1;
  const at = now.toISOString();
  const show =
    version.kind === "design"
      ? withDesignAdded(present, version.document, `kept-${revision}`)
      : version.document;
  if (!setAside(at)) return FULL;
  const text = JSON.stringify({ app: "coilwright", version: 1, revision, savedAt: at, show });
  const inJournal = await toJournal(revision, text);
  await secondPlace().put(`${RECORD_PREFIX}${revision}`, JSON.stringify({ revision, text }));
  return toStorage(text) || inJournal ? null : NOT_WRITTEN;
}
