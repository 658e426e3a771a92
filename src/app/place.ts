import { useSyncExternalStore } from "react";

const sheet = "#sheet";

function subscribe(notify: () => void): () => void {
  window.addEventListener("hashchange", notify);
  return () => window.removeEventListener("hashchange", notify);
}

/** Whether the build sheet is in front; it has its own address, so that Back leads to the bench. */
export function useSheetOpen(): boolean {
  return useSyncExternalStore(subscribe, () => window.location.hash === sheet);
}

export function openSheet() {
  window.location.hash = sheet;
}

export function closeSheet() {
  window.location.hash = "";
}
