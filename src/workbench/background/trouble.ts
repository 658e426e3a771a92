/** What is told of a computation that came to no result. */
import type { StoreApi } from "zustand/vanilla";
import { type Notice, type WayOut, withNotice, withoutNotice } from "../session/notice";
import type { WorkbenchState } from "../session/workbenchState";
import { patience, waitLonger } from "./patience";
import type { Failure } from "./runner";

export interface Trouble {
  /** as in “the sweep of bursts” */
  what: string;
  failure: Failure | "given up";
  /** label of the edit that it followed; null where there was none */
  lastEdit: string | null;
  /** whether its worker is not started again by itself */
  stopped: boolean;
  /** Computes the same, or the newest that waits, once more. */
  again(): void;
  /** Lets what comes next be computed. */
  resume(): void;
}

/** Takes trouble of a computation, or null where it has come to a result. */
export type Report = (what: string, trouble: Trouble | null) => void;

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const HAPPENED: Record<Trouble["failure"], () => string> = {
  threw: () => "came to no result",
  died: () => "stopped unexpectedly",
  silent: () => `gave no sign of life for ${patience()} s and was ended`,
  "given up": () => "was given up",
};

function remedy({ failure, lastEdit, stopped }: Trouble): string {
  const back = lastEdit === null ? "Change the design" : "Take that back";
  if (stopped) return `It has failed three times in a row and stays stopped. ${back}, or start it again.`;
  if (failure === "silent") return `${back}, or let it take longer.`;
  if (failure === "threw") return `${back}, or change another field.`;
  return `The next change starts it again.`;
}

function sentence(trouble: Trouble): string {
  const after = trouble.lastEdit === null ? "" : `; the last change before it was “${trouble.lastEdit}”`;
  return `${capitalised(trouble.what)} ${HAPPENED[trouble.failure]()}${after}. ${remedy(trouble)}`;
}

function waysOut({ failure, lastEdit, stopped }: Trouble): WayOut[] {
  const again: WayOut = failure === "silent" && !stopped ? "wait longer" : "compute again";
  return [...(lastEdit === null ? [] : (["take back the last change"] as const)), again, "dismiss"];
}

/** The notice of a trouble, with ways out that work. */
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

/** Reports to the notices of a session. */
export function reportTo(store: StoreApi<WorkbenchState>): Report {
  return (what, trouble) => {
    const { notices } = store.getState();
    const after = trouble ? withNotice(notices, troubleNotice(trouble)) : withoutNotice(notices, what);
    if (after !== notices) store.setState({ notices: after });
  };
}

/** Label of the edit that made a state what it is; null where nothing was edited. */
export function lastEditOf({ gesture, history }: WorkbenchState): string | null {
  return gesture?.label ?? history.past.at(-1)?.label ?? null;
}
