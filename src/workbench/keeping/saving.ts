/** Saves committed edits: the first immediately, later ones at short intervals, always including the last. */
import type { StoreApi } from "zustand/vanilla";
import type { Show } from "../../design/show";
import type { WorkbenchState } from "../session/workbenchState";
import { committedShow } from "./committedShow";
import type { Keeper } from "./keeper";
import { afterClearing, afterOtherSaved, afterOutcome } from "./saveNotices";
import type { SaveOutcome } from "./showWriter";

/** ms between saves during editing */
export const SAVE_INTERVAL = 100;

export interface Saving {
  /** Saves committed changes immediately. */
  flush(): void;
  /** Saves immediately, with or without changes. */
  saveNow(): Promise<void>;
  /** Checks whether another tab has saved or storage was cleared, and reports it; data cleared in part are written again. */
  checkStorage(): void;
  /** Marks a show that was just read from storage as saved. */
  adoptAsSaved(show: Show): void;
  /** Whether committed changes would be lost with the page. */
  isAtRisk(): boolean;
  /** Resolves when no save is in progress. */
  settled(): Promise<void>;
  close(): void;
}

/** Connects a store with its keeper. */
export function connectSaving(store: StoreApi<WorkbenchState>, keeper: Keeper): Saving {
  /** the show on disk, or in local storage if there is no database; null after storage was cleared */
  let savedShow: Show | null = committedShow(store.getState());
  /** the newest save in progress */
  let saveInProgress: { show: Show; end: Promise<void> } | null = null;
  let interval: ReturnType<typeof setTimeout> | null = null;

  /** whether something was committed since the newest save began */
  let waiting = false;

  const committed = () => committedShow(store.getState());
  const settle = (show: Show, outcome: SaveOutcome) => {
    if (outcome.kind === "saved" || outcome.kind === "kept") savedShow = show;
    store.setState((state) => afterOutcome(state, outcome, committed() === show));
  };
  const save = (): Promise<void> => {
    const show = committed();
    waiting = false;
    if (interval !== null) clearTimeout(interval);
    interval = setTimeout(() => {
      interval = null;
      saveInTime();
    }, SAVE_INTERVAL);
    return follow(show, keeper.save(show));
  };
  const follow = (show: Show, saved: Promise<SaveOutcome>): Promise<void> => {
    const end = saved.then((outcome) => {
      if (saveInProgress?.show === show) saveInProgress = null;
      settle(show, outcome);
      saveInTime();
    });
    saveInProgress = { show, end };
    return end;
  };
  const saveInTime = () => {
    if (waiting && interval === null && !saveInProgress) void save();
  };
  const changed = (state: WorkbenchState, before: WorkbenchState) => {
    const show = committedShow(state);
    if (show === committedShow(before) || (show === savedShow && !waiting && !saveInProgress)) return;
    waiting = true;
    store.setState({ saveState: "saving" });
    saveInTime();
  };
  const endWatching = store.subscribe(changed);
  const base = keeper.recordBase();
  if (base) {
    store.setState({ saveState: "saving" });
    void follow(committed(), base);
  }
  const flush = () => {
    const show = committed();
    if (show !== (saveInProgress?.show ?? savedShow)) void save();
  };
  const checkStorage = () => {
    if (keeper.changedElsewhere()) store.setState(afterOtherSaved);
    void keeper.remainingData().then((left) => {
      if (savedShow === null) return;
      if (left === "a part" && store.getState().saveState === "saved") void save();
      if (left !== "nothing") return;
      savedShow = null;
      store.setState(afterClearing);
    });
  };

  return {
    flush,
    saveNow: save,
    checkStorage,
    adoptAsSaved(show) {
      savedShow = show;
      store.setState((state) => afterOutcome(state, { kind: "saved", localTrouble: null }, true));
    },
    isAtRisk: () => committed() !== savedShow,
    async settled() {
      while (saveInProgress) await saveInProgress.end;
    },
    close() {
      flush();
      endWatching();
    },
  };
}
