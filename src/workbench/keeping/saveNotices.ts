/** The save state shown on screen: its message, and notices with their actions. */
import { type Notice, withNotice, withoutNotice } from "../session/notice";
import type { WorkbenchState } from "../session/workbenchState";
import type { SaveOutcome } from "./showWriter";

const SAVE = "save";
const CONFLICT = "other-tab";
const DATABASE = "database";
const LOCAL = "local-storage";
const CLEARED = "cleared";

export const NO_STORAGE =
  "This browser stores nothing for this page (private window or blocked storage): export the show to keep it.";

const CONFLICT_SENTENCE =
  "Another tab has saved a newer state of this show. Nothing is saved here until you choose one of them.";
const SHELVED_SENTENCE = "Until then this tab's edits are saved as versions.";
const CLEARED_SENTENCE =
  "The data stored for this page were cleared while it was open: the show on screen is no longer saved.";

/** Nothing is stored anywhere. */
export function saveNotice(sentence: string): Notice {
  const waysOut = ["save again", "export the show", "dismiss"] as const;
  return { id: SAVE, severity: "error", sentence, details: [], waysOut };
}

/** The database fails. */
export function databaseNotice(sentence: string): Notice {
  const waysOut = ["export the show", "dismiss"] as const;
  return { id: DATABASE, severity: "warning", sentence, details: [], waysOut };
}

/** Local storage fails, and the database works. */
export function localNotice(sentence: string): Notice {
  return {
    id: LOCAL,
    severity: "warning",
    sentence: `${sentence} The show is still saved in the browser's database.`,
    details: [],
    waysOut: ["export the show", "dismiss"],
  };
}

const CONFLICT_NOTICE: Notice = {
  id: CONFLICT,
  severity: "warning",
  sentence: CONFLICT_SENTENCE,
  details: [],
  waysOut: ["take the other", "keep this"],
};

const CLEARED_NOTICE: Notice = {
  id: CLEARED,
  severity: "warning",
  sentence: CLEARED_SENTENCE,
  details: [],
  waysOut: ["save again", "export the show", "dismiss"],
};

type Changes = Partial<WorkbenchState>;

function without(notices: readonly Notice[], ids: readonly string[]): readonly Notice[] {
  return ids.reduce(withoutNotice, notices);
}

/** Shows a notice once while its problem persists, so that it does not reappear with each edit. */
function shownOnce(state: WorkbenchState, notice: Notice): readonly Notice[] {
  return state.saveMessage === notice.sentence ? state.notices : withNotice(state.notices, notice);
}

/** The changes of the state after a save; `isNewest` if nothing was committed since it began. */
export function afterOutcome(state: WorkbenchState, outcome: SaveOutcome, isNewest: boolean): Changes {
  switch (outcome.kind) {
    case "saved": {
      const settled = without(state.notices, [SAVE, CONFLICT, DATABASE, CLEARED]);
      if (!isNewest) return settled === state.notices ? {} : { notices: settled };
      if (outcome.localTrouble === null)
        return { saveState: "saved", saveMessage: "", notices: withoutNotice(settled, LOCAL) };
      const notice = localNotice(outcome.localTrouble);
      const notices = shownOnce({ ...state, notices: settled }, notice);
      return { saveState: "saved", saveMessage: notice.sentence, notices };
    }
    case "kept": {
      const shown = shownOnce(state, databaseNotice(outcome.sentence));
      const notices = without(shown, [SAVE, CONFLICT, CLEARED]);
      return { notices, saveMessage: outcome.sentence, ...(isNewest && { saveState: "kept" as const }) };
    }
    case "held":
      return { saveState: "unsaved", saveMessage: outcome.sentence };
    case "conflict": {
      const sentence = outcome.shelved ? `${CONFLICT_SENTENCE} ${SHELVED_SENTENCE}` : CONFLICT_SENTENCE;
      const notices = withNotice(state.notices, { ...CONFLICT_NOTICE, sentence });
      return { saveState: "unsaved", saveMessage: sentence, notices };
    }
    case "failed": {
      const notices = withNotice(state.notices, saveNotice(outcome.sentence));
      return { saveState: "failed", saveMessage: outcome.sentence, notices };
    }
  }
}

/** The changes after another tab has saved, before this tab tries to save. */
export function afterOtherSaved(state: WorkbenchState): Changes {
  if (state.notices.some(({ id }) => id === CONFLICT)) return {};
  return afterOutcome(state, { kind: "conflict", shelved: false }, true);
}

/** The changes after the browser's storage was cleared. */
export function afterClearing(state: WorkbenchState): Changes {
  const notices = withNotice(state.notices, CLEARED_NOTICE);
  return { saveState: "unsaved", saveMessage: CLEARED_SENTENCE, notices };
}

/** The change that adds the notice of a score file that could not be stored. */
export function afterRefusedBytes(sentence: string): (state: WorkbenchState) => Changes {
  const waysOut = ["export the show", "dismiss"] as const;
  const notice: Notice = { id: "score-bytes", severity: "warning", sentence, details: [], waysOut };
  return ({ notices }) => ({ notices: withNotice(notices, notice) });
}
