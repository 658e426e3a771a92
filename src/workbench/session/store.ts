/** The running session: one store, the actions on it, and what keeps it evaluated and saved. */
import { createStore, type StoreApi } from "zustand/vanilla";
import { connectEvaluator } from "../background/evaluating";
import type { Evaluator } from "../background/evaluator";
import { connectKeeping, type KeepingOptions, newKeepingPlaces } from "../keeping/keeping";
import { openKept } from "../keeping/opening";
import type { Versions } from "../keeping/versions";
import { type Documents, newDocuments, type TextFile } from "./documents";
import { type Editing, newEditing } from "./editing";
import { newHistory } from "./history";
import type { WayOut } from "./notice";
import { initialState, type WorkbenchState } from "./workbenchState";

export interface WorkbenchOptions extends KeepingOptions {
  evaluator: Evaluator;
}

interface KeepingActions {
  /** Takes one of the ways out that a notice offers; answers when what follows from it is done. */
  takeWayOut(noticeId: string, wayOut: WayOut): Promise<void>;
  /** The stored text as it is, readable or not, as a file; null where there is none. */
  keptFile(): TextFile | null;
  /** The dated versions and the bin. */
  versions: Versions;
}

export type WorkbenchActions = Editing & Documents & KeepingActions;

export interface Workbench {
  store: StoreApi<WorkbenchState>;
  actions: WorkbenchActions;
  /** Saves at once what waits to be saved. */
  flush(): void;
  /** Answers when nothing is being saved any more. */
  settled(): Promise<void>;
  /** Looks whether another tab has saved, or storage was cleared, and tells of it. */
  checkStorage(): void;
  /** Whether something is committed that would be lost with the page. */
  isAtRisk(): boolean;
  close(): void;
}

/** Makes a session over an evaluator and a storage; what is kept is loaded before anything is written. */
export function createWorkbench({ evaluator, ...options }: WorkbenchOptions): Workbench {
  const places = newKeepingPlaces(options);
  const { show, ...opening } = openKept(places.keeper, options.found.trouble);
  const store = createStore<WorkbenchState>(() => ({ ...initialState(newHistory(show)), ...opening }));
  const editing = newEditing(store, options.now);
  const { saving, ...keeping } = connectKeeping(store, editing, places, options);
  const endEvaluating = connectEvaluator(store, evaluator);
  const present = () => store.getState().history.present;
  const documents = newDocuments(
    editing,
    keeping.making,
    present,
    options.newId,
    () => store.getState().readOnly,
  );
  return {
    store,
    actions: {
      ...editing,
      ...documents,
      takeWayOut: keeping.takeWayOut,
      keptFile() {
        const text = places.keeper.rawText();
        return text === null ? null : { fileName: "kept.coilwright-show.json", text };
      },
      versions: keeping.versions,
    },
    flush: saving.flush,
    settled: saving.settled,
    checkStorage: saving.checkStorage,
    isAtRisk: saving.isAtRisk,
    close() {
      keeping.close();
      endEvaluating();
      evaluator.close();
    },
  };
}
