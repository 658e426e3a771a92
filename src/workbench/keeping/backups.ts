/** A small ring of earlier states, and the place where text that cannot be read is set aside. */
import { type LoadedShow, type ReadShow, readKeptText } from "./loadedShow";
import { BACKUP_KEYS, KEPT_PREFIX } from "./storageKeys";

type LoadedOk = Extract<LoadedShow, { kind: "ok" }>;

/** ms; a backup is made at most this often, so that the ring reaches back further than a few seconds */
const BACKUP_INTERVAL = 10 * 60_000;

interface Backup {
  key: string;
  loaded: LoadedOk;
}

function readableBackups(storage: Storage, readShow: ReadShow): Backup[] {
  return BACKUP_KEYS.flatMap((key) => {
    const loaded = readKeptText(storage.getItem(key), readShow);
    return loaded.kind === "ok" ? [{ key, loaded }] : [];
  }).sort((a, b) => b.loaded.revision - a.loaded.revision);
}

/** The newest backup that can be read, or null. */
export function newestBackup(storage: Storage, readShow: ReadShow): LoadedOk | null {
  return readableBackups(storage, readShow)[0]?.loaded ?? null;
}

function oldestKey(storage: Storage, readShow: ReadShow): string {
  const used = readableBackups(storage, readShow);
  const free = BACKUP_KEYS.find((key) => !used.some((backup) => backup.key === key));
  return free ?? used[used.length - 1].key;
}

/** Copies kept text into the ring, in place of the oldest backup. */
export function addBackup(storage: Storage, readShow: ReadShow, text: string): void {
  storage.setItem(oldestKey(storage, readShow), text);
}

/** Whether the newest backup is old enough for another one. */
export function backupIsDue(storage: Storage, readShow: ReadShow, now: Date): boolean {
  const newest = newestBackup(storage, readShow);
  if (!newest) return true;
  const age = now.getTime() - Date.parse(newest.savedAt);
  return !(age >= 0 && age < BACKUP_INTERVAL);
}

function storedKeys(storage: Storage): string[] {
  return Array.from({ length: storage.length }, (_, index) => storage.key(index)).filter(
    (key) => key !== null,
  );
}

/**
 * Sets text aside under a key of its own, once; later loads of the same text find it there.
 * @throws what the storage throws: the caller must then not write over the text
 */
export function setAside(storage: Storage, text: string, now: Date): void {
  const known = storedKeys(storage).some(
    (key) => key.startsWith(KEPT_PREFIX) && storage.getItem(key) === text,
  );
  if (!known) storage.setItem(`${KEPT_PREFIX}${now.toISOString()}`, text);
}

/** The text that was set aside last, or null. */
export function lastSetAside(storage: Storage): string | null {
  const keys = storedKeys(storage)
    .filter((key) => key.startsWith(KEPT_PREFIX))
    .sort();
  const last = keys.at(-1);
  return last === undefined ? null : storage.getItem(last);
}
