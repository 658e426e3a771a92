import type { Show } from "../../design/show";
import type { WorkbenchState } from "../session/workbenchState";

/** The show without what a gesture has not committed yet. */
export function committedShow(state: WorkbenchState): Show {
  return state.gesture?.before ?? state.history.present;
}
