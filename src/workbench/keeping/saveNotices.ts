/** What the session is told about saving: the sign's state, its words, and notices with their ways out. */
import { type Notice, withNotice, withoutNotice } from "../session/notice";
import type { WorkbenchState } from "../session/workbenchState";
import type { SaveOutcome } from "./showWriter";

const SAVE = "save";
const CONFLICT = "other-tab";
const DATABASE = "database";
const LOCAL = "local-storage";
const CLEARED = "cleared";

export const NO_STORAGE =
  "This browser keeps nothing for this page (private window or blocked storage): export the show to keep it.";

const CONFLICT_SENTENCE =
  "Another tab has saved a newer state of this show. Nothing is saved here until you choose one of the two.";
const SHELVED_SENTENCE = "Until then this tab's edits are kept among the versions.";
const CLEARED_SENTENCE =
  "What this browser kept for this page was cleared while it was open: what is on screen is not kept any more.";

/** Nothing is kept anywhere. */
export function saveNotice(sentence: string): Notice {
  const waysOut = ["save again", "export the show", "dismiss"] as const;
  return { id: SAVE, severity: "error", sentence, details: [], waysOut };
}

/** The database does not do its part. */
export function databaseNotice(sentence: string): Notice {
  const waysOut = ["export the show", "dismiss"] as const;
  return { id: DATABASE, severity: "warning", sentence, details: [], waysOut };
}

/** Local storage does not do its part, and the database does. */
export function localNotice(sentence: string): Notice {
  const told = `${sentence} The browser's database keeps the show meanwhile.`;
  return {
    id: LOCAL,
    severity: "warning",
    sentence: told,
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

/** A notice that is told once as long as the trouble lasts, so that it does not come again with each edit. */
function toldOnce(state: WorkbenchState, notice: Notice): readonly Notice[] {
  return state.saveMessage === notice.sentence ? state.notices : withNotice(state.notices, notice);
}

/** What becomes of a state when a save has ended; `isNewest` where nothing was committed since it began. */
export function afterOutcome(state: WorkbenchState, outcome: SaveOutcome, isNewest: boolean): Changes {
  switch (outcome.kind) {
    case "saved": {
      const settled = without(state.notices, [SAVE, CONFLICT, DATABASE, CLEARED]);
      if (!isNewest) return settled === state.notices ? {} : { notices: settled };
      if (outcome.localTrouble === null)
        return { saveState: "saved", saveMessage: "", notices: withoutNotice(settled, LOCAL) };
      const notice = localNotice(outcome.localTrouble);
      const notices = toldOnce({ ...state, notices: settled }, notice);
      return { saveState: "saved", saveMessage: notice.sentence, notices };
    }
    case "kept": {
      const told = toldOnce(state, databaseNotice(outcome.sentence));
      const notices = without(told, [SAVE, CONFLICT, CLEARED]);
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

/** Another tab has saved, and this one has not tried since. */
export function afterOtherSaved(state: WorkbenchState): Changes {
  if (state.notices.some(({ id }) => id === CONFLICT)) return {};
  return afterOutcome(state, { kind: "conflict", shelved: false }, true);
}

/** What was kept has gone from the browser. */
export function afterClearing(state: WorkbenchState): Changes {
  const notices = withNotice(state.notices, CLEARED_NOTICE);
  return { saveState: "unsaved", saveMessage: CLEARED_SENTENCE, notices };
}

/** The bytes of a score are not kept: the change of a state that tells of it. */
export function afterRefusedBytes(sentence: string): (state: WorkbenchState) => Changes {
  const waysOut = ["export the show", "dismiss"] as const;
  const notice: Notice = { id: "score-bytes", severity: "warning", sentence, details: [], waysOut };
  return ({ notices }) => ({ notices: withNotice(notices, notice) });
}
