import type { Containment } from "../ui/containment";
import { session } from "../workbench/session/session";
import { openDesignOf } from "../workbench/session/showEdits";
import type { WorkbenchState } from "../workbench/session/workbenchState";

/** The version in package.json, put in by the build. */
const PROGRAM_VERSION: string = import.meta.env.PROGRAM_VERSION ?? "without a version";

const openDesign = (state: WorkbenchState) => openDesignOf(state.history.present);

/** The session's data for a part that failed: what to report, and when to retry. */
export const containment: Containment = {
  account() {
    const design = JSON.stringify(openDesign(session.store.getState()), null, 2);
    return [`Coilwright ${PROGRAM_VERSION}`, navigator.userAgent, "", "The open design:", design].join("\n");
  },
  onChange: (tryAgain) =>
    session.store.subscribe((state, before) => {
      if (openDesign(state) !== openDesign(before) || state.evaluation !== before.evaluation) tryAgain();
    }),
};
