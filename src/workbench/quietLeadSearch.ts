/** The lead with the smallest turn-off current, searched on demand beside the page. */
import { useCallback, useEffect, useState } from "react";
import type { QuietLead } from "../calc/circuit/commutationAdvice";
import type { Design } from "../design/design";
import { designQuietLead } from "../evaluation/quietLead";

export interface LeadSearch {
  /** null before a search, and where there is none to be found */
  found: QuietLead | null;
  state: "never" | "searching" | "done";
  search: () => void;
}

function searchIn(design: Design, tell: (found: QuietLead | null) => void): () => void {
  if (typeof Worker === "undefined") {
    tell(designQuietLead(design));
    return () => {};
  }
  const worker = new Worker(new URL("./quietLead.worker.ts", import.meta.url), { type: "module" });
  worker.onmessage = (event: MessageEvent<QuietLead | null>) => tell(event.data);
  worker.onerror = () => tell(null);
  worker.postMessage(design);
  return () => worker.terminate();
}

/** What was found belongs to one design: a change of it, the lead itself aside, ends and forgets the search. */
export function useQuietLead(design: Design): LeadSearch {
  const [asked, setAsked] = useState<string | null>(null);
  const [found, setFound] = useState<QuietLead | null | undefined>(undefined);
  const { drive } = design;
  const key = JSON.stringify({
    ...design,
    drive: { ...drive, commutation: { ...drive.commutation, leadTime: 0 } },
  });
  useEffect(() => {
    if (asked === null || asked !== key) return;
    setFound(undefined);
    return searchIn(JSON.parse(asked) as Design, setFound);
  }, [asked, key]);
  const current = asked === key;
  return {
    found: (current && found) || null,
    state: current ? (found === undefined ? "searching" : "done") : "never",
    search: useCallback(() => setAsked(key), [key]),
  };
}
