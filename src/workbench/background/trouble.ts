/** The notice of a computation that failed. */
import type { StoreApi } from "zustand/vanilla";
import { type Notice, type WayOut, withNotice, withoutNotice } from "../session/notice";
import type { WorkbenchState } from "../session/workbenchState";
import { patience, waitLonger } from "./patience";
import type { Failure } from "./runner";

export interface Trouble {
  /** as in “the sweep of bursts” */
  what: string;
  failure: Failure | "cancelled";
  /** label of the edit before it; null without one */
  lastEdit: string | null;
  /** whether its worker is not restarted automatically */
  stopped: boolean;
  /** Computes the same request, or the newest that waits, once more. */
  again(): void;
  /** Allows the next request to be computed. */
  resume(): void;
}

/** Reports trouble of a computation, or null after it has a result. */
export type Report = (what: string, trouble: Trouble | null) => void;

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const HAPPENED: Record<Trouble["failure"], () => string> = {
  threw: () => "failed",
  "not started": () => "could not start, because this browser does not let the page run workers",
  died: () => "stopped unexpectedly",
  silent: () => `did not respond for ${patience()} s and was stopped`,
  cancelled: () => "was cancelled",
};

function remedy({ failure, lastEdit, stopped }: Trouble): string {
  if (failure === "not started")
    return "Editing and saving still work; use another browser, or allow workers, to compute.";
  const back = lastEdit === null ? "Change the design" : "Undo that change";
  if (stopped)
    return `It has failed three times in a row and will not restart by itself. ${back}, or compute it again.`;
  if (failure === "silent") return `${back}, or wait longer.`;
  if (failure === "threw") return `${back}, or change another field.`;
  return `The next change restarts it.`;
}

function sentence(trouble: Trouble): string {
  const isByEdit = trouble.lastEdit !== null && trouble.failure !== "not started";
  const after = !isByEdit ? "" : `; the last change before it was “${trouble.lastEdit}”`;
  return `${capitalised(trouble.what)} ${HAPPENED[trouble.failure]()}${after}. ${remedy(trouble)}`;
}

function waysOut({ failure, lastEdit, stopped }: Trouble): WayOut[] {
  // no change of the design could help
  if (failure === "not started") return ["compute again", "dismiss"];
  const again: WayOut = failure === "silent" && !stopped ? "wait longer" : "compute again";
  return [...(lastEdit === null ? [] : (["take back the last change"] as const)), again, "dismiss"];
}

/** The notice of a failed computation, with its remedies. */
export function troubleNotice(trouble: Trouble, id = trouble.what): Notice {
  return {
    id,
    severity: "error",
    sentence: sentence(trouble),
    details: [],
    waysOut: waysOut(trouble),
    acts: {
      "take back the last change": trouble.resume,
      "compute again": trouble.again,
      "wait longer": () => {
        waitLonger();
        trouble.again();
      },
    },
  };
}

/** Reports trouble as notices of a session. */
export function reportTo(store: StoreApi<WorkbenchState>): Report {
  return (what, trouble) => {
    const { notices } = store.getState();
    const after = trouble ? withNotice(notices, troubleNotice(trouble)) : withoutNotice(notices, what);
    if (after !== notices) store.setState({ notices: after });
  };
}

/** Label of the last edit, or of the current gesture; null if nothing was edited. */
export function lastEditOf({ gesture, history }: WorkbenchState): string | null {
  return gesture?.label ?? history.past.at(-1)?.label ?? null;
}
