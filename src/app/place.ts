import { useSyncExternalStore } from "react";
import { BIN_ADDRESS } from "../panels/versions/binAddress";

export type Place = "bench" | "sheet" | "theory" | "versions";

const addresses: Record<string, Place> = {
  "#sheet": "sheet",
  "#theory": "theory",
  "#versions": "versions",
  [BIN_ADDRESS]: "versions",
};

function subscribe(notify: () => void): () => void {
  window.addEventListener("hashchange", notify);
  return () => window.removeEventListener("hashchange", notify);
}

/** The current view; each has its own URL fragment, so that Back leads to the bench. */
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

export function openVersions() {
  window.location.hash = "#versions";
}

/** Opens the versions with the bin selected. */
export function openBin() {
  window.location.hash = BIN_ADDRESS;
}

export function backToBench() {
  window.location.hash = "";
}
