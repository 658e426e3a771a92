/** The session's state as shown on screen. */
import type { Notice } from "./notice";
import type { SaveState, WorkbenchState } from "./workbenchState";

export interface SessionView {
  /** such as “Undo move tap”; null if there is nothing to undo */
  undoLabel: string | null;
  redoLabel: string | null;
  canUndo: boolean;
  canRedo: boolean;
  /** label of the running gesture */
  gesture: string | null;
  saveState: SaveState;
  saveMessage: string;
  fieldRevision: number;
  driveRevision: number;
  revision: number;
  evaluating: boolean;
  readOnly: string | null;
  notices: readonly Notice[];
}

/** “Undo move tap”: the initial is lowercased, unless the word is an abbreviation. */
function stepLabel(verb: string, label: string | undefined): string | null {
  if (label === undefined) return null;
  const lower = /^\p{Lu}(?!\p{Lu})/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
  return `${verb} ${lower}`;
}

/** The view of a state. */
export function sessionView(state: WorkbenchState): SessionView {
  const { past, future } = state.history;
  return {
    undoLabel: stepLabel("Undo", past.at(-1)?.label),
    redoLabel: stepLabel("Redo", future[0]?.label),
    canUndo: past.length > 0 || state.gesture !== null,
    canRedo: future.length > 0 && state.gesture === null,
    gesture: state.gesture?.label ?? null,
    saveState: state.saveState,
    saveMessage: state.saveMessage,
    fieldRevision: state.fieldRevision,
    driveRevision: state.driveRevision,
    revision: state.revision,
    evaluating: state.evaluating,
    readOnly: state.readOnly,
    notices: state.notices,
  };
}
