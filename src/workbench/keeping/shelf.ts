/** Keeps versions in the database within their budget; what the live save needs comes before them. */
import { newListeners } from "../background/listeners";
import type { KeepingDatabase } from "./keepingDatabase";
import { isQuotaError } from "./storageError";
import { firstHalf, overBudget, thinnedOut } from "./thinning";
import type { NewVersion } from "./version";

/** bytes that versions take at most */
const MOST_ROOM = 50_000_000;
/** of what the browser grants the page */
const SHARE = 0.1;

/** Bytes that the browser grants the page; null where it does not say. */
export type Quota = () => Promise<number | null>;

export interface Shelf {
  /**
   * Keeps versions, at once and on disk.
   * @throws what the database throws, where nothing can be cleared away for them
   */
  keep(versions: readonly NewVersion[]): Promise<void>;
  /** Clears the oldest versions away where the browser is full; false where there are none. */
  makeRoom(): Promise<boolean>;
  remove(ids: readonly string[]): Promise<void>;
  /** Tells whenever versions have come or gone. */
  listen(listener: () => void): () => void;
}

/** Makes the shelf over a database. */
export function newShelf(database: KeepingDatabase, quota: Quota, now: () => Date): Shelf {
  const listeners = newListeners<void>();

  const budget = async () => Math.min(MOST_ROOM, ((await quota()) ?? Number.POSITIVE_INFINITY) * SHARE);
  const remove = async (ids: readonly string[]) => {
    if (ids.length > 0) await database.removeVersions(ids);
  };
  /** What has just been kept stays, whatever its size; it is weighed when the next comes. */
  const tidy = async (justKept: ReadonlySet<string>) => {
    const summaries = (await database.listVersions()).filter(({ id }) => !justKept.has(id));
    const thinned = new Set(thinnedOut(summaries, now().getTime()));
    const rest = summaries.filter(({ id }) => !thinned.has(id));
    await remove([...thinned, ...overBudget(rest, await budget())]);
  };
  const makeRoom = async () => {
    const going = firstHalf(await database.listVersions());
    await remove(going);
    listeners.tell();
    return going.length > 0;
  };
  const put = async (versions: readonly NewVersion[]): Promise<void> => {
    try {
      await database.keepVersions(versions);
    } catch (error) {
      if (!isQuotaError(error) || !(await makeRoom())) throw error;
      await put(versions);
    }
  };
  return {
    async keep(versions) {
      if (versions.length === 0) return;
      await put(versions);
      // what is not cleared away now is so with the next: the versions themselves are on disk
      await tidy(new Set(versions.map(({ id }) => id))).catch(() => undefined);
      listeners.tell();
    },
    makeRoom,
    async remove(ids) {
      await remove(ids);
      listeners.tell();
    },
    listen: listeners.listen,
  };
}
