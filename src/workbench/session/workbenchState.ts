/** The state of the running session. */
import type { Show } from "../../design/show";
import type { Evaluation } from "../../evaluation/evaluation";
import type { History } from "./history";
import type { Notice } from "./notice";

/** “saved” is on disk; “kept” is in local storage only, which a browser writes to disk at some later time. */
export type SaveState = "saved" | "kept" | "saving" | "unsaved" | "failed";

export interface Gesture {
  label: string;
  /** the show when the gesture began */
  before: Show;
}

export interface WorkbenchState {
  history: History<Show>;
  gesture: Gesture | null;
  /** of the open design; groups are null and findings empty before the first result */
  evaluation: Evaluation;
  /** of the open design; incremented with each change */
  revision: number;
  /** of the design that the first group of the evaluation belongs to; 0 before the first result */
  fieldRevision: number;
  /** of the design that the second group belongs to */
  driveRevision: number;
  /** replies below this belong to a design that is no longer open */
  oldestRevision: number;
  evaluating: boolean;
  /** the tap, in turns, with most energy into the spark, and the key of its sweep; null before the first sweep */
  mostEnergy: { key: string; tap: number | null } | null;
  saveState: SaveState;
  /** why it is not saved; empty if it is */
  saveMessage: string;
  /** why nothing can be changed; null if editing is allowed */
  readOnly: string | null;
  notices: readonly Notice[];
}

export const EMPTY_EVALUATION: Evaluation = {
  secondary: null,
  topLoad: null,
  primary: null,
  coupling: null,
  tank: null,
  tuning: null,
  losses: null,
  response: null,
  burst: null,
  drive: null,
  corrections: null,
  findings: [],
};

/** The initial state. */
export function initialState(history: History<Show>): WorkbenchState {
  return {
    history,
    gesture: null,
    evaluation: EMPTY_EVALUATION,
    revision: 0,
    fieldRevision: 0,
    driveRevision: 0,
    oldestRevision: 0,
    evaluating: false,
    mostEnergy: null,
    saveState: "saved",
    saveMessage: "",
    readOnly: null,
    notices: [],
  };
}
