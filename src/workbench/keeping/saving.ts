/** Saves what is committed a moment after the last change, and at once when the page goes away. */
import type { StoreApi } from "zustand/vanilla";
import type { Show } from "../../design/show";
import { type Notice, withNotice, withoutNotice } from "../notice";
import type { WorkbenchState } from "../workbenchState";
import type { Keeper, SaveOutcome } from "./keeper";

/** ms from the last change to the save */
export const SAVE_DELAY = 400;

const NO_STORAGE =
  "This browser keeps nothing for this page (private window or blocked storage): export the show to keep it.";

const SAVE_NOTICE = "save";
const CONFLICT_NOTICE = "other-tab";

const CONFLICT_SENTENCE =
  "Another tab has saved a newer state of this show. Nothing is saved here until you choose one of the two.";

const CONFLICT: Notice = {
  id: CONFLICT_NOTICE,
  severity: "warning",
  sentence: CONFLICT_SENTENCE,
  details: [],
  waysOut: ["take the other", "keep this"],
};

function failedNotice(sentence: string): Notice {
  return { id: SAVE_NOTICE, severity: "error", sentence, details: [], waysOut: ["save again", "dismiss"] };
}

type Changes = Partial<WorkbenchState>;

function afterOutcome(state: WorkbenchState, outcome: SaveOutcome): Changes {
  switch (outcome.kind) {
    case "saved": {
      const notices = withoutNotice(withoutNotice(state.notices, SAVE_NOTICE), CONFLICT_NOTICE);
      return { saveState: "saved", saveMessage: "", notices };
    }
    case "held":
      return { saveState: "unsaved", saveMessage: outcome.sentence };
    case "conflict": {
      const notices = withNotice(state.notices, CONFLICT);
      return { saveState: "unsaved", saveMessage: CONFLICT_SENTENCE, notices };
    }
    case "failed": {
      const notices = withNotice(state.notices, failedNotice(outcome.sentence));
      return { saveState: "failed", saveMessage: outcome.sentence, notices };
    }
  }
}

/** The show without what a gesture has not committed yet. */
export function committedShow(state: WorkbenchState): Show {
  return state.gesture?.before ?? state.history.present;
}

export interface Saving {
  /** Saves at once what is committed and not yet saved. */
  flush(): void;
  /** Saves at once whether or not there were changes. */
  saveNow(): void;
  /** Looks whether another tab has saved, and tells of it. */
  lookElsewhere(): void;
  /** Takes a show as saved that was just read from the storage. */
  adoptAsSaved(show: Show): void;
  close(): void;
}

/** Nothing can be kept: that is said, and nothing else happens. */
function savingNowhere(store: StoreApi<WorkbenchState>): Saving {
  store.setState({ saveState: "failed", saveMessage: NO_STORAGE });
  const nothing = () => undefined;
  return { flush: nothing, saveNow: nothing, lookElsewhere: nothing, adoptAsSaved: nothing, close: nothing };
}

/** Connects a store with its keeper; `null` where the browser keeps nothing. */
export function connectSaving(store: StoreApi<WorkbenchState>, keeper: Keeper | null): Saving {
  if (!keeper) return savingNowhere(store);
  let timer: ReturnType<typeof setTimeout> | null = null;
  let savedShow = committedShow(store.getState());

  const stopTimer = () => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
  };
  const saveNow = () => {
    stopTimer();
    const show = committedShow(store.getState());
    const outcome = keeper.save(show);
    if (outcome.kind === "saved") savedShow = show;
    store.setState((state) => afterOutcome(state, outcome));
  };
  const waitThenSave = () => {
    timer = setTimeout(() => (store.getState().gesture ? waitThenSave() : saveNow()), SAVE_DELAY);
  };
  const flush = () => {
    if (committedShow(store.getState()) !== savedShow) saveNow();
  };
  const follow = (state: WorkbenchState, before: WorkbenchState) => {
    const show = committedShow(state);
    if (show === committedShow(before) || show === savedShow) return;
    stopTimer();
    waitThenSave();
    store.setState({ saveState: "saving" });
  };
  const endFollowing = store.subscribe(follow);

  return {
    flush,
    saveNow,
    lookElsewhere() {
      if (keeper.changedElsewhere()) store.setState((state) => afterOutcome(state, { kind: "conflict" }));
    },
    adoptAsSaved(show) {
      stopTimer();
      savedShow = show;
      store.setState((state) => afterOutcome(state, { kind: "saved" }));
    },
    close() {
      flush();
      stopTimer();
      endFollowing();
    },
  };
}
