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
   * @throws what the database throws, where there is no room for them even so
   */
  keep(versions: readonly NewVersion[]): Promise<void>;
  /**
   * Runs what writes; where the browser is full, clears the half of the versions that goes first away and
   * runs it once more. Where that does not help, as in browsers that free what was deleted much later, no
   * more is cleared away until a write has succeeded.
   * @throws what the write throws
   */
  withRoom<Value>(write: () => Promise<Value>): Promise<Value>;
  remove(ids: readonly string[]): Promise<void>;
  /** Versions may have come or gone by themselves. */
  tellOfChange(): void;
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
  /** whether clearing away is known to give no room */
  let inVain = false;
  const attempt = async <Value>(write: () => Promise<Value>): Promise<Value> => {
    const value = await write();
    inVain = false;
    return value;
  };
  const withRoom: Shelf["withRoom"] = async (write) => {
    try {
      return await attempt(write);
    } catch (error) {
      if (!isQuotaError(error) || inVain) throw error;
      inVain = true;
      await remove(firstHalf(await database.listVersions()));
      listeners.tell();
      return attempt(write);
    }
  };
  return {
    async keep(versions) {
      if (versions.length === 0) return;
      await withRoom(() => database.keepVersions(versions));
      // what is not cleared away now is so with the next: the versions themselves are on disk
      await tidy(new Set(versions.map(({ id }) => id))).catch(() => undefined);
      listeners.tell();
    },
    withRoom,
    async remove(ids) {
      await remove(ids);
      listeners.tell();
    },
    tellOfChange: listeners.tell,
    listen: listeners.listen,
  };
}
