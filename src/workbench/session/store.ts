/** The running session: the store, its actions, its evaluation and its saving. */
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
  /** Runs an action of a notice; resolves when it is done. */
  takeWayOut(noticeId: string, wayOut: WayOut): Promise<void>;
  /** The stored text, readable or not, as a file; null if there is none. */
  keptFile(): TextFile | null;
  /** The dated versions and the bin. */
  versions: Versions;
}

export type WorkbenchActions = Editing & Documents & KeepingActions;

export interface Workbench {
  store: StoreApi<WorkbenchState>;
  actions: WorkbenchActions;
  /** Saves pending changes immediately. */
  flush(): void;
  /** Resolves when no save is in progress. */
  settled(): Promise<void>;
  /** Checks whether another tab has saved or storage was cleared, and reports it. */
  checkStorage(): void;
  /** Whether committed changes would be lost with the page. */
  isAtRisk(): boolean;
  close(): void;
}

/** Creates a session; stored data are loaded before anything is written. */
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
