/** Stores versions in the database within their budget; saving the show has priority. */
import { newListeners } from "../background/listeners";
import type { KeepingDatabase } from "./keepingDatabase";
import { isQuotaError } from "./storageError";
import { firstHalf, overBudget, thinnedOut } from "./thinning";
import type { NewVersion } from "./version";

/** bytes, maximum size of all versions */
const MOST_BYTES = 50_000_000;
/** maximum fraction of the bytes that the browser grants */
const SHARE = 0.1;

/** Bytes that the browser grants the page; null if unknown. */
export type Quota = () => Promise<number | null>;

export interface Shelf {
  /**
   * Stores versions on disk.
   * @throws what the database throws, if there is no space even after removing others
   */
  keep(versions: readonly NewVersion[]): Promise<void>;
  /**
   * Runs a write. If the browser's storage is full, removes the less important half of the versions and retries
   * once. If that does not help, as in browsers that free space much later, nothing more is removed until a
   * write has succeeded.
   * @throws what the write throws
   */
  withRoom<Value>(write: () => Promise<Value>): Promise<Value>;
  remove(ids: readonly string[]): Promise<void>;
  /** Reports that versions may have changed elsewhere. */
  tellOfChange(): void;
  /** Calls back whenever versions are added or removed. */
  listen(listener: () => void): () => void;
}

/** Creates the shelf of a database. */
export function newShelf(database: KeepingDatabase, quota: Quota, now: () => Date): Shelf {
  const listeners = newListeners<void>();

  const budget = async () => Math.min(MOST_BYTES, ((await quota()) ?? Number.POSITIVE_INFINITY) * SHARE);
  const remove = async (ids: readonly string[]) => {
    if (ids.length > 0) await database.removeVersions(ids);
  };
  /** Versions that were just stored stay, whatever their size, until the next ones are stored. */
  const tidy = async (justKept: ReadonlySet<string>) => {
    const summaries = (await database.listVersions()).filter(({ id }) => !justKept.has(id));
    const thinned = new Set(thinnedOut(summaries, now().getTime()));
    const rest = summaries.filter(({ id }) => !thinned.has(id));
    await remove([...thinned, ...overBudget(rest, await budget())]);
  };
  /** whether removing versions is known to free no space */
  let isFutile = false;
  const attempt = async <Value>(write: () => Promise<Value>): Promise<Value> => {
    const value = await write();
    isFutile = false;
    return value;
  };
  const withRoom: Shelf["withRoom"] = async (write) => {
    try {
      return await attempt(write);
    } catch (error) {
      if (!isQuotaError(error) || isFutile) throw error;
      isFutile = true;
      await remove(firstHalf(await database.listVersions()));
      listeners.tell();
      return attempt(write);
    }
  };
  return {
    async keep(versions) {
      if (versions.length === 0) return;
      await withRoom(() => database.keepVersions(versions));
      // after a failure it is retried with the next versions: these are on disk already
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
