import type { Show } from "../../design/show";
import type { WorkbenchState } from "../session/workbenchState";

/** The show without uncommitted changes of a gesture. */
export function committedShow(state: WorkbenchState): Show {
  return state.gesture?.before ?? state.history.present;
}
