/** Saves what is committed: the first edit at once, those that follow in short steps, the last one always. */
import type { StoreApi } from "zustand/vanilla";
import type { Show } from "../../design/show";
import type { WorkbenchState } from "../session/workbenchState";
import { committedShow } from "./committedShow";
import type { Keeper } from "./keeper";
import { afterClearing, afterOtherSaved, afterOutcome } from "./saveNotices";
import type { SaveOutcome } from "./showWriter";

/** ms from one save to the next while editing goes on */
export const SAVE_INTERVAL = 100;

export interface Saving {
  /** Saves at once what is committed and not yet saved. */
  flush(): void;
  /** Saves at once whether or not there were changes. */
  saveNow(): Promise<void>;
  /** Looks whether another tab has saved, or storage was cleared, and tells of it; what was cleared in part is written anew. */
  checkStorage(): void;
  /** Takes a show as saved that was just read from the storage. */
  adoptAsSaved(show: Show): void;
  /** Whether something is committed that would be lost with the page. */
  isAtRisk(): boolean;
  /** Answers when nothing is being saved any more. */
  settled(): Promise<void>;
  close(): void;
}

/** Connects a store with its keeper. */
export function connectSaving(store: StoreApi<WorkbenchState>, keeper: Keeper): Saving {
  /** what is on disk, or in local storage where there is no more; null once that was cleared */
  let savedShow: Show | null = committedShow(store.getState());
  /** what the newest save under way holds */
  let underWay: { show: Show; end: Promise<void> } | null = null;
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
      if (underWay?.show === show) underWay = null;
      settle(show, outcome);
      saveInTime();
    });
    underWay = { show, end };
    return end;
  };
  const saveInTime = () => {
    if (waiting && interval === null && !underWay) void save();
  };
  const changed = (state: WorkbenchState, before: WorkbenchState) => {
    const show = committedShow(state);
    if (show === committedShow(before) || (show === savedShow && !waiting && !underWay)) return;
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
    if (show !== (underWay?.show ?? savedShow)) void save();
  };
  const checkStorage = () => {
    if (keeper.changedElsewhere()) store.setState(afterOtherSaved);
    void keeper.whatIsLeft().then((left) => {
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
      while (underWay) await underWay.end;
    },
    close() {
      flush();
      endWatching();
    },
  };
}
