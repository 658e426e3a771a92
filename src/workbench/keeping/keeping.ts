/** Everything that keeps a session, put together: keeper, saving, versions, and what a start tells of them. */
import type { StoreApi } from "zustand/vanilla";
import { parseShow } from "../../design/show";
import type { Editing } from "../session/editing";
import { type WayOut, withNotice } from "../session/notice";
import type { WorkbenchState } from "../session/workbenchState";
import type { FoundAtStart } from "./findAtStart";
import { type Keeper, newKeeper } from "./keeper";
import { offersOf } from "./offers";
import { NO_STORAGE } from "./saveNotices";
import { connectSaving, type Saving } from "./saving";
import { newShelf, type Quota, type Shelf } from "./shelf";
import { refusedWriteSentence } from "./storageError";
import type { NewVersion } from "./version";
import { connectVersionMaking, type VersionMaking } from "./versionMaking";
import { newVersions, type Versions } from "./versions";
import { takeWayOut, type WaysOutNeeds } from "./waysOut";

export interface KeepingOptions {
  /** null where the browser has no local storage */
  storage: Storage | null;
  /** what the browser's database holds, read before anything is written */
  found: FoundAtStart;
  /** Bytes that the browser grants; asked before versions are weighed. */
  quota: Quota;
  /** Asks the browser to keep this page's data; called once there is something of the user's own. */
  persist: () => void;
  now: () => Date;
  newId: () => string;
}

/** What is there before the session has a store. */
export interface KeepingPlaces {
  keeper: Keeper;
  shelf: Shelf | null;
}

export interface Keeping {
  saving: Saving;
  versions: Versions;
  making: VersionMaking;
  takeWayOut(noticeId: string, wayOut: WayOut): Promise<void>;
  close(): void;
}

export function newKeepingPlaces(options: KeepingOptions): KeepingPlaces {
  const { database } = options.found;
  const shelf = database && newShelf(database, options.quota, options.now);
  return { shelf, keeper: newKeeper({ ...options, shelf, readShow: parseShow }) };
}

/** ms after the browser has closed the database in which it may be clearing the rest */
const CLEARING = 1000;

function tellUnkept(store: StoreApi<WorkbenchState>, error: unknown): void {
  const sentence = `An earlier version could not be kept. ${refusedWriteSentence(error)}`;
  store.setState(({ notices }) => ({
    notices: withNotice(notices, {
      id: "versions",
      severity: "warning",
      sentence,
      details: [],
      waysOut: ["export the show", "dismiss"],
    }),
  }));
}

/** Asks for lasting storage at the first edit, once. */
function askToPersist(store: StoreApi<WorkbenchState>, persist: () => void): () => void {
  const end = store.subscribe((state, before) => {
    if (state.history.past === before.history.past) return;
    end();
    persist();
  });
  return end;
}

async function tellOffers(
  store: StoreApi<WorkbenchState>,
  { keeper }: KeepingPlaces,
  found: FoundAtStart,
  versions: Versions,
) {
  await keeper.tidied();
  if (!found.database || found.records === null) return;
  const offers = await offersOf(found.database, versions.restore);
  store.setState(({ notices }) => ({ notices: offers.reduce(withNotice, notices) }));
}

/** Connects a session with the places where it is kept. */
export function connectKeeping(
  store: StoreApi<WorkbenchState>,
  { editShow, undo }: Pick<Editing, "editShow" | "undo">,
  places: KeepingPlaces,
  options: KeepingOptions,
): Keeping {
  const { keeper, shelf } = places;
  const { database } = options.found;
  const { trouble } = options.found;
  if (trouble !== null)
    store.setState(
      keeper.refusedAtStart() === null
        ? { saveState: "kept", saveMessage: trouble }
        : { saveState: "failed", saveMessage: NO_STORAGE },
    );
  const saving = connectSaving(store, keeper);
  const keep = (kept: readonly NewVersion[]) =>
    void shelf?.keep(kept).catch((error: unknown) => tellUnkept(store, error));
  const making = connectVersionMaking({ store, keep, now: options.now, newId: options.newId });
  const versions = newVersions(database, shelf, {
    editShow,
    making,
    present: () => store.getState().history.present,
    readOnly: () => store.getState().readOnly,
  });
  let looking: ReturnType<typeof setTimeout> | undefined;
  const lookLater = () => {
    clearTimeout(looking);
    looking = setTimeout(() => {
      saving.checkStorage();
      shelf?.tellOfChange();
    }, CLEARING);
  };
  const ends = [
    making.close,
    askToPersist(store, options.persist),
    database?.listenForLoss(lookLater) ?? (() => undefined),
    () => clearTimeout(looking),
    saving.close,
  ];
  void tellOffers(store, places, options.found, versions);
  const needs: WaysOutNeeds = { store, keeper, saving, undo };
  return {
    saving,
    versions,
    making,
    takeWayOut: (noticeId, wayOut) => takeWayOut(needs, noticeId, wayOut),
    close() {
      for (const end of ends) end();
    },
  };
}
