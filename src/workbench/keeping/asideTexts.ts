/** Moves other stored texts into the versions: unreadable text, states that were not opened, backups of earlier builds. */
import { oldTexts } from "./backups";
import type { KeepingDatabase } from "./keepingDatabase";
import { type ReadShow, readKeptText } from "./loadedShow";
import type { LocalPlace } from "./localPlace";
import type { Aside } from "./resolve";
import type { Shelf } from "./shelf";
import { CAUSES, type Shelving, shelvedShow, shelvedText } from "./shelvedTexts";
import { KEPT_PREFIX } from "./storageKeys";
import type { NewVersion } from "./version";

/** A hash of a text, the same at each start, so that no text is added twice (FNV-1a over UTF-16). */
function hashOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index++) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  return `${text.length}-${(hash >>> 0).toString(36)}`;
}

function isDate(text: string): boolean {
  return Number.isFinite(Date.parse(text));
}

/** The version made from a stored text, dated when it was saved if it says so. */
export function versionOfText(
  text: string,
  readShow: ReadShow,
  now: Date,
  shelving: Pick<Shelving, "cause" | "offered">,
): NewVersion {
  const reading = readKeptText(text, readShow);
  const id = `aside-${hashOf(text)}`;
  if (reading.kind !== "ok")
    return shelvedText(text, { id, at: now.toISOString(), cause: CAUSES.unreadable });
  const at = isDate(reading.savedAt) ? new Date(reading.savedAt) : now;
  return shelvedShow(reading.show, { id, at: at.toISOString(), ...shelving });
}

/** Stores the versions that do not exist yet, whether or not they are still offered. */
async function keepOnce(
  database: KeepingDatabase,
  shelf: Shelf,
  versions: readonly NewVersion[],
): Promise<void> {
  if (versions.length === 0) return;
  const known = new Set((await database.listVersions()).map(({ id }) => id));
  await shelf.keep(versions.filter(({ id }) => !known.has(id)));
}

export interface AsideNeeds {
  local: LocalPlace;
  database: KeepingDatabase;
  shelf: Shelf;
  readShow: ReadShow;
  now: () => Date;
}

/** Stores the states that were found but not opened. */
export function keepAsides(asides: readonly Aside[], needs: AsideNeeds): Promise<void> {
  const versions = asides.map(({ text, offered }) =>
    versionOfText(text, needs.readShow, needs.now(), { cause: CAUSES.beside, offered }),
  );
  return keepOnce(needs.database, needs.shelf, versions);
}

/** Moves other texts from local storage into the versions; each is removed only once it is on disk. */
export async function moveOldTexts(needs: AsideNeeds): Promise<void> {
  const found = oldTexts(needs.local);
  const versions = found.map(({ key, text }) => {
    const cause = key.startsWith(KEPT_PREFIX) ? CAUSES.setAside : CAUSES.earlierBuild;
    return versionOfText(text, needs.readShow, needs.now(), { cause });
  });
  await keepOnce(needs.database, needs.shelf, versions);
  for (const { key } of found) needs.local.remove(key);
}
