import { useSyncExternalStore } from "react";

const query = "(min-width: 1100px)";

function subscribe(notify: () => void): () => void {
  const media = window.matchMedia(query);
  media.addEventListener("change", notify);
  return () => media.removeEventListener("change", notify);
}

/** Whether the window is wide enough for the three-column layout. */
export function useWide(): boolean {
  return useSyncExternalStore(subscribe, () => window.matchMedia(query).matches);
}
