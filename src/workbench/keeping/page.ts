/** What the page tells a session: that it goes away, or that another tab has written. */

import type { Workbench } from "../store";
import { SHOW_KEY } from "./storageKeys";

/** Saves when the page is hidden or left, and looks at what other tabs save. Returns what ends it. */
export function watchPage(workbench: Pick<Workbench, "flush" | "lookElsewhere">, page: Window): () => void {
  const hidden = () => {
    if (page.document.visibilityState === "hidden") workbench.flush();
  };
  const stored = (event: StorageEvent) => {
    if (event.key === SHOW_KEY || event.key === null) workbench.lookElsewhere();
  };
  page.document.addEventListener("visibilitychange", hidden);
  page.addEventListener("pagehide", workbench.flush);
  page.addEventListener("storage", stored);
  return () => {
    page.document.removeEventListener("visibilitychange", hidden);
    page.removeEventListener("pagehide", workbench.flush);
    page.removeEventListener("storage", stored);
  };
}
