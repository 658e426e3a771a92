/** Brings into the versions what lies beside the show: unreadable text, unseen states, the ring of earlier builds. */
import { oldTexts } from "./backups";
import type { KeepingDatabase } from "./keepingDatabase";
import { type ReadShow, readKeptText } from "./loadedShow";
import type { LocalPlace } from "./localPlace";
import type { Aside } from "./resolve";
import type { Shelf } from "./shelf";
import { CAUSES, type Shelving, shelvedShow, shelvedText } from "./shelvedTexts";
import { KEPT_PREFIX } from "./storageKeys";
import type { NewVersion } from "./version";

/** A short name of a text, the same at each start, so that nothing is brought in twice (FNV-1a over UTF-16). */
function nameOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index++) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  return `${text.length}-${(hash >>> 0).toString(36)}`;
}

function isDate(text: string): boolean {
  return Number.isFinite(Date.parse(text));
}

/** The version of a kept text, dated by when it was saved where it tells. */
export function versionOfText(
  text: string,
  readShow: ReadShow,
  now: Date,
  shelving: Pick<Shelving, "cause" | "offered">,
): NewVersion {
  const reading = readKeptText(text, readShow);
  const id = `aside-${nameOf(text)}`;
  if (reading.kind !== "ok")
    return shelvedText(text, { id, at: now.toISOString(), cause: CAUSES.unreadable });
  const at = isDate(reading.savedAt) ? new Date(reading.savedAt) : now;
  return shelvedShow(reading.show, { id, at: at.toISOString(), ...shelving });
}

/** Keeps the versions that are not there yet, whatever has become of their offers. */
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

/** Keeps what was found beside the state that opened. */
export function keepAsides(asides: readonly Aside[], needs: AsideNeeds): Promise<void> {
  const versions = asides.map(({ text, offered }) =>
    versionOfText(text, needs.readShow, needs.now(), { cause: CAUSES.beside, offered }),
  );
  return keepOnce(needs.database, needs.shelf, versions);
}

/** Moves what local storage holds beside the show into the versions; it stays where that is not on disk. */
export async function moveOldTexts(needs: AsideNeeds): Promise<void> {
  const found = oldTexts(needs.local);
  const versions = found.map(({ key, text }) => {
    const cause = key.startsWith(KEPT_PREFIX) ? CAUSES.setAside : CAUSES.earlierBuild;
    return versionOfText(text, needs.readShow, needs.now(), { cause });
  });
  await keepOnce(needs.database, needs.shelf, versions);
  for (const { key } of found) needs.local.remove(key);
}
