/** What the running session knows. */
import type { Show } from "../../design/show";
import type { Evaluation } from "../../evaluation/evaluation";
import type { History } from "./history";
import type { Notice } from "./notice";

/** “saved” is on disk; “kept” is in local storage alone, which a browser writes to disk when it suits it. */
export type SaveState = "saved" | "kept" | "saving" | "unsaved" | "failed";

export interface Gesture {
  label: string;
  /** the show as it was when the gesture began */
  before: Show;
}

export interface WorkbenchState {
  history: History<Show>;
  gesture: Gesture | null;
  /** of the open design; groups are null and findings empty before the first result */
  evaluation: Evaluation;
  /** of the open design as it stands; one higher with each change of it */
  revision: number;
  /** of the design that the first group of the evaluation belongs to; 0 before the first result */
  fieldRevision: number;
  /** of the design that the second group belongs to */
  driveRevision: number;
  /** replies below this belong to a design that is no longer on the board */
  oldestRevision: number;
  evaluating: boolean;
  /** turns, where bursts give the spark most energy, and what bursts those were; null before the first sweep */
  mostEnergy: { key: string; tap: number | null } | null;
  saveState: SaveState;
  /** why it is not saved; empty where all is well */
  saveMessage: string;
  /** why nothing can be changed; null where everything can */
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

/** A state in which nothing has happened yet. */
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
