/** The lead with the smallest turn-off current, searched on demand beside the page. */
import { useEffect } from "react";
import { useStore } from "zustand";
import type { QuietLead } from "../../calc/circuit/commutationAdvice";
import type { Design } from "../../design/design";
import { session } from "../session/session";
import { newTask } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startQuietLead } from "./workers";

export const leadTask = newTask<Design, QuietLead | null>({
  what: "the search for the quietest lead",
  startWorker: startQuietLead,
  grace: 0,
  report: reportTo(session.store),
  lastEdit: () => lastEditOf(session.store.getState()),
});

export interface LeadSearch {
  /** null before a search, and where there is none to be found */
  found: QuietLead | null;
  state: "never" | "searching" | "done";
  search: () => void;
}

/** Equal for designs that have the same quietest lead: their own lead does not count. */
function leadKey(design: Design): string {
  const { drive } = design;
  return JSON.stringify({
    ...design,
    drive: { ...drive, commutation: { ...drive.commutation, leadTime: 0 } },
  });
}

/** What was found belongs to one design: a change of it, the lead itself aside, ends the search. */
export function useQuietLead(design: Design): LeadSearch {
  const { result, request, asked, computing } = useStore(leadTask.answer);
  const key = leadKey(design);
  const keyOf = (each: Design | null) => each && leadKey(each);
  const overtaken = computing && keyOf(asked) !== key;
  useEffect(() => {
    if (overtaken) leadTask.cancel();
  }, [overtaken]);
  const current = keyOf(request) === key;
  return {
    found: current ? result : null,
    state: computing && !overtaken ? "searching" : current ? "done" : "never",
    search: () => leadTask.insist(design),
  };
}
