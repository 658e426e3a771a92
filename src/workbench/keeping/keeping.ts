/** Connects all parts that store a session: keeper, saving, versions, and the notices of the start. */
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
  /** null if the browser has no local storage */
  storage: Storage | null;
  /** contents of the browser's database, read before anything is written */
  found: FoundAtStart;
  /** Bytes that the browser grants, which limit the versions. */
  quota: Quota;
  /** Asks the browser for persistent storage; called at the user's first edit. */
  persist: () => void;
  now: () => Date;
  newId: () => string;
}

/** The parts that exist before the session's store. */
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

/** ms from the browser's closing the database to the check, during which it may clear the rest */
const CLEARING_DELAY = 1000;

function reportUnsavedVersion(store: StoreApi<WorkbenchState>, error: unknown): void {
  const sentence = `An earlier version could not be saved. ${refusedWriteSentence(error)}`;
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

/** Asks for persistent storage at the first edit, once. */
function askToPersist(store: StoreApi<WorkbenchState>, persist: () => void): () => void {
  const end = store.subscribe((state, before) => {
    if (state.history.past === before.history.past) return;
    end();
    persist();
  });
  return end;
}

async function showOffers(
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

/** Connects a session with its storage. */
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
    void shelf?.keep(kept).catch((error: unknown) => reportUnsavedVersion(store, error));
  const making = connectVersionMaking({ store, keep, now: options.now, newId: options.newId });
  const versions = newVersions(database, shelf, {
    editShow,
    making,
    present: () => store.getState().history.present,
    readOnly: () => store.getState().readOnly,
  });
  let pendingCheck: ReturnType<typeof setTimeout> | undefined;
  const checkLater = () => {
    clearTimeout(pendingCheck);
    pendingCheck = setTimeout(() => {
      saving.checkStorage();
      shelf?.tellOfChange();
    }, CLEARING_DELAY);
  };
  const ends = [
    making.close,
    askToPersist(store, options.persist),
    database?.listenForLoss(checkLater) ?? (() => undefined),
    () => clearTimeout(pendingCheck),
    saving.close,
  ];
  void showOffers(store, places, options.found, versions);
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
