/** Opens the browser's databases, whatever state they are in, and opens them again where they were closed. */
import { type DBSchema, type IDBPDatabase, openDB, type StoreNames } from "idb";
import { within } from "./within";

/** ms in which a database must open */
const OPENING_PATIENCE = 2_000;

export interface DatabasePlan<Schema extends DBSchema> {
  name: string;
  version: number;
  stores: readonly StoreNames<Schema>[];
  create(database: IDBPDatabase<Schema>, store: StoreNames<Schema>): void;
}

export interface Connection<Schema extends DBSchema> {
  /**
   * The database, opened where it is not.
   * @throws where the browser refuses, or does not answer in time
   */
  open(): Promise<IDBPDatabase<Schema>>;
}

function isNewerThanAsked(error: unknown): boolean {
  return error instanceof DOMException && error.name === "VersionError";
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
      if (isNewerThanAsked(error)) return openAt(undefined);
      throw error;
    });
    if (plan.stores.every((store) => database.objectStoreNames.contains(store))) return database;
    const next = database.version + 1;
    database.close();
    return openAt(next);
  };
  return {
    async open() {
      if (!opening) {
        const started = openWhole();
        opening = started;
        started.catch(() => {
          if (opening === started) opening = null;
        });
      }
      return within(OPENING_PATIENCE, opening);
    },
  };
}
