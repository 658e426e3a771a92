/** The running session: one store, the actions on it, and what keeps it evaluated and saved. */
import { createStore, type StoreApi } from "zustand/vanilla";
import { parseShow } from "../design/show";
import type { Evaluator } from "./background/evaluator";
import { type Documents, newDocuments, type TextFile } from "./documents";
import { type Editing, newEditing } from "./editing";
import { connectEvaluator } from "./evaluating";
import { newHistory, recordStep } from "./history";
import { type Keeper, newKeeper } from "./keeping/keeper";
import { openKept } from "./keeping/opening";
import { connectSaving, type Saving } from "./keeping/saving";
import { type WayOut, withoutNotice } from "./notice";
import { initialState, type WorkbenchState } from "./workbenchState";

export interface WorkbenchOptions {
  evaluator: Evaluator;
  /** null where the browser keeps nothing */
  storage: Storage | null;
  now: () => Date;
  newId: () => string;
}

interface Keeping {
  /** Takes one of the ways out that a notice offers. */
  takeWayOut(noticeId: string, wayOut: WayOut): void;
  /** The stored text as it is, readable or not, as a file; null where there is none. */
  keptFile(): TextFile | null;
}

export type WorkbenchActions = Editing & Documents & Keeping;

export interface Workbench {
  store: StoreApi<WorkbenchState>;
  actions: WorkbenchActions;
  /** Saves at once what waits to be saved. */
  flush(): void;
  /** Looks whether another tab has saved, and tells of it. */
  lookElsewhere(): void;
  close(): void;
}

function takeOther(store: StoreApi<WorkbenchState>, keeper: Keeper, saving: Saving): void {
  const show = keeper.takeOther();
  if (!show) {
    const sentence = keeper.heldBecause() ?? "What the other tab has saved cannot be read here.";
    store.setState({ saveState: "unsaved", saveMessage: sentence });
    return;
  }
  saving.adoptAsSaved(show);
  const { history, gesture } = store.getState();
  const before = gesture?.before ?? history.present;
  store.setState({ history: recordStep(history, "take the other tab's state", before, show), gesture: null });
}

function startAfresh(store: StoreApi<WorkbenchState>, keeper: Keeper, saving: Saving): void {
  const outcome = keeper.startAfresh();
  if (outcome.kind !== "saved") {
    store.setState({ saveState: "failed", saveMessage: "sentence" in outcome ? outcome.sentence : "" });
    return;
  }
  store.setState({ readOnly: null });
  saving.saveNow();
}

function newKeeping(
  store: StoreApi<WorkbenchState>,
  keeper: Keeper | null,
  saving: Saving,
  undo: () => void,
): Keeping {
  const dismiss = (id: string) => store.setState(({ notices }) => ({ notices: withoutNotice(notices, id) }));
  const ways: Partial<Record<WayOut, (kept: Keeper) => void>> = {
    "start afresh": (kept) => startAfresh(store, kept, saving),
    "discard what is kept": (kept) => {
      kept.discardStored();
      saving.saveNow();
    },
    "take the other": (kept) => takeOther(store, kept, saving),
    "keep this": (kept) => startAfresh(store, kept, saving),
    "save again": () => saving.saveNow(),
  };
  return {
    takeWayOut(noticeId, wayOut) {
      if (wayOut === "export what is kept") return;
      const notice = store.getState().notices.find(({ id }) => id === noticeId);
      dismiss(noticeId);
      if (wayOut === "take back the last change") undo();
      notice?.acts?.[wayOut]?.();
      if (keeper) ways[wayOut]?.(keeper);
    },
    keptFile() {
      const text = keeper?.rawText() ?? null;
      return text === null ? null : { fileName: "kept.coilwright-show.json", text };
    },
  };
}

/** Makes a session over an evaluator and a storage; what is kept is loaded before anything is written. */
export function createWorkbench({ evaluator, storage, now, newId }: WorkbenchOptions): Workbench {
  const keeper = storage && newKeeper(storage, parseShow, now);
  const { show, ...opening } = openKept(keeper);
  const store = createStore<WorkbenchState>(() => ({ ...initialState(newHistory(show)), ...opening }));
  const saving = connectSaving(store, keeper);
  const endEvaluating = connectEvaluator(store, evaluator);
  const editing = newEditing(store, now);
  const present = () => store.getState().history.present;
  const documents = newDocuments(editing, present, newId, () => store.getState().readOnly);
  return {
    store,
    actions: { ...editing, ...documents, ...newKeeping(store, keeper, saving, editing.undo) },
    flush: saving.flush,
    lookElsewhere: saving.lookElsewhere,
    close() {
      saving.close();
      endEvaluating();
      evaluator.close();
    },
  };
}
