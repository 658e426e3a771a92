/** Opens the browser's databases, whatever state they are in, and opens them again where they were closed. */
import { type DBSchema, type IDBPDatabase, openDB, type StoreNames } from "idb";
import { within } from "./within";

/** ms in which a database must open */
const OPENING_PATIENCE = 5_000;
/** ms in which the browser must have done what was asked of an open database */
const ANSWER_PATIENCE = 5_000;

export interface DatabasePlan<Schema extends DBSchema> {
  name: string;
  version: number;
  stores: readonly StoreNames<Schema>[];
  create(database: IDBPDatabase<Schema>, store: StoreNames<Schema>): void;
}

export interface Connection<Schema extends DBSchema> {
  /**
   * Does work on the database, which is opened where it is not.
   * @throws where the browser refuses, or does not answer in time
   */
  use<Value>(work: (database: IDBPDatabase<Schema>) => Promise<Value>): Promise<Value>;
}

function isNamed(error: unknown, name: string): boolean {
  return error instanceof DOMException && error.name === name;
}

/** Makes a connection; `lost` is called when the browser closes the database by itself. */
export function newConnection<Schema extends DBSchema>(
  plan: DatabasePlan<Schema>,
  lost: () => void = () => undefined,
): Connection<Schema> {
  let opening: Promise<IDBPDatabase<Schema>> | null = null;

  const openAt = (version: number | undefined) => {
    const opened = openDB<Schema>(plan.name, version, {
      upgrade: (database) => {
        for (const store of plan.stores)
          if (!database.objectStoreNames.contains(store)) plan.create(database, store);
      },
      // another tab wants to delete it or bring it up to date: neither must wait for this one
      blocking: (_current, _blocked, event) => {
        opening = null;
        (event.target as IDBDatabase).close();
        lost();
      },
      terminated: () => {
        opening = null;
        lost();
      },
    });
    return opened;
  };
  /** As the plan says; the version that is there where that is higher; one higher where stores are missing. */
  const openWhole = async () => {
    const database = await openAt(plan.version).catch((error: unknown) => {
      if (isNamed(error, "VersionError")) return openAt(undefined);
      throw error;
    });
    if (plan.stores.every((store) => database.objectStoreNames.contains(store))) return database;
    const next = database.version + 1;
    database.close();
    return openAt(next);
  };
  const opened = () => {
    if (!opening) {
      const started = openWhole();
      opening = started;
      started.catch(() => {
        if (opening === started) opening = null;
      });
    }
    return within(OPENING_PATIENCE, opening);
  };
  const attempt = async <Value>(work: (database: IDBPDatabase<Schema>) => Promise<Value>) => {
    const database = await opened();
    return within(ANSWER_PATIENCE, work(database));
  };
  return {
    async use(work) {
      try {
        return await attempt(work);
      } catch (error) {
        // a connection that was closed without a word, as of a page that comes back from the cache
        if (!isNamed(error, "InvalidStateError")) throw error;
        opening = null;
        return attempt(work);
      }
    },
  };
}
