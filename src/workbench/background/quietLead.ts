/** The lead time with the least turn-off current, searched on request in the background. */
import { useEffect } from "react";
import { useStore } from "zustand";
import type { QuietLead } from "../../calc/circuit/commutationAdvice";
import type { Design } from "../../design/design";
import { session } from "../session/session";
import { newTask } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startQuietLead } from "./workers";

export const leadTask = newTask<Design, QuietLead | null>({
  what: "the search for the lead time with the least turn-off current",
  startWorker: startQuietLead,
  grace: 0,
  report: reportTo(session.store),
  lastEdit: () => lastEditOf(session.store.getState()),
});

export interface LeadSearch {
  /** null before a search, and if none was found */
  found: QuietLead | null;
  state: "never" | "searching" | "done";
  search: () => void;
}

/** A key that is equal for designs that differ only in their lead time. */
function leadKey(design: Design): string {
  const { drive } = design;
  return JSON.stringify({
    ...design,
    drive: { ...drive, commutation: { ...drive.commutation, leadTime: 0 } },
  });
}

/** The result belongs to one design: any change of it, except of the lead time itself, ends the search. */
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
