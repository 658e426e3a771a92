import { useSyncExternalStore } from "react";

export type Place = "bench" | "sheet" | "theory";

const addresses: Record<string, Place> = { "#sheet": "sheet", "#theory": "theory" };

function subscribe(notify: () => void): () => void {
  window.addEventListener("hashchange", notify);
  return () => window.removeEventListener("hashchange", notify);
}

/** What is in front; each has its own address, so that Back leads to the bench. */
export function usePlace(): Place {
  return useSyncExternalStore(subscribe, () => addresses[window.location.hash] ?? "bench");
}

export function sheetIsOpen(): boolean {
  return addresses[window.location.hash] === "sheet";
}

export function openSheet() {
  window.location.hash = "#sheet";
}

export function openTheory() {
  window.location.hash = "#theory";
}

export function backToBench() {
  window.location.hash = "";
}
