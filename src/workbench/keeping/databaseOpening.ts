/** Opens the browser's databases in whatever state, and reopens them after they were closed. */
import { type DBSchema, type IDBPDatabase, openDB, type StoreNames } from "idb";
import { within } from "./within";

/** ms to open a database */
const OPENING_TIMEOUT = 5_000;
/** ms for a request to an open database */
const REQUEST_TIMEOUT = 5_000;

export interface DatabasePlan<Schema extends DBSchema> {
  name: string;
  version: number;
  stores: readonly StoreNames<Schema>[];
  create(database: IDBPDatabase<Schema>, store: StoreNames<Schema>): void;
}

export interface Connection<Schema extends DBSchema> {
  /**
   * Runs work on the database and opens it if necessary.
   * @throws if the browser refuses or does not respond in time
   */
  use<Value>(work: (database: IDBPDatabase<Schema>) => Promise<Value>): Promise<Value>;
}

function isNamed(error: unknown, name: string): boolean {
  return error instanceof DOMException && error.name === name;
}

/** Creates a connection; `lost` is called when the browser closes the database by itself. */
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
      // another tab wants to delete or upgrade it and must not wait for this one
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
  /** Opens the planned version, or the existing one if that is higher; upgrades it if stores are missing. */
  const openComplete = async () => {
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
      const started = openComplete();
      opening = started;
      started.catch(() => {
        if (opening === started) opening = null;
      });
    }
    return within(OPENING_TIMEOUT, opening);
  };
  const attempt = async <Value>(work: (database: IDBPDatabase<Schema>) => Promise<Value>) => {
    const database = await opened();
    return within(REQUEST_TIMEOUT, work(database));
  };
  return {
    async use(work) {
      try {
        return await attempt(work);
      } catch (error) {
        // a connection that was closed without an event, as on a page restored from the cache
        if (!isNamed(error, "InvalidStateError")) throw error;
        opening = null;
        return attempt(work);
      }
    },
  };
}
