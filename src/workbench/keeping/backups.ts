/**
 * Backups in local storage: a small ring of earlier states, written by earlier builds, and text that could
 * not be read. Unreadable text is still backed up there first, because that is synchronous.
 */

import { type LoadedShow, type ReadShow, readKeptText } from "./loadedShow";
import type { LocalPlace } from "./localPlace";
import { BACKUP_KEYS, KEPT_PREFIX } from "./storageKeys";

type LoadedOk = Extract<LoadedShow, { kind: "ok" }>;

/** The newest readable backup of the ring, or null. */
export function newestBackup(local: LocalPlace, readShow: ReadShow): LoadedOk | null {
  return (
    BACKUP_KEYS.flatMap((key) => {
      const loaded = readKeptText(local.read(key).text, readShow);
      return loaded.kind === "ok" ? [loaded] : [];
    }).sort((a, b) => b.revision - a.revision)[0] ?? null
  );
}

function keptKeys(local: LocalPlace): string[] {
  return local
    .keys()
    .filter((key) => key.startsWith(KEPT_PREFIX))
    .sort();
}

/**
 * Backs up a text under its own key, once.
 * @returns what the browser threw; null if it is stored, otherwise the caller must not overwrite the text
 */
export function setAside(local: LocalPlace, text: string, now: Date): unknown {
  const known = keptKeys(local).some((key) => local.read(key).text === text);
  return known ? null : local.write(`${KEPT_PREFIX}${now.toISOString()}`, text);
}

/** The text that was backed up last, or null. */
export function lastSetAside(local: LocalPlace): string | null {
  const last = keptKeys(local).at(-1);
  return last === undefined ? null : local.read(last).text;
}

export interface OldText {
  key: string;
  text: string;
}

/** All backups in local storage. */
export function oldTexts(local: LocalPlace): OldText[] {
  return [...BACKUP_KEYS, ...keptKeys(local)].flatMap((key) => {
    const { text } = local.read(key);
    return text === null ? [] : [{ key, text }];
  });
}
