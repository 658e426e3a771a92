/** What the page tells a session: that it goes away, or that another tab has written. */
import type { Workbench } from "../session/store";
import { SHOW_KEY } from "./storageKeys";

/** ms; browsers do not tell a page that parts of its storage were cleared */
const LOOK_INTERVAL = 10_000;

type Watched = Pick<Workbench, "flush" | "lookElsewhere" | "isAtRisk">;

/**
 * Saves when the page is hidden or left, asks before it closes over something that is not saved, and
 * looks at what other tabs save. Returns what ends it.
 */
export function watchPage(workbench: Watched, page: Window): () => void {
  const turned = () => {
    if (page.document.visibilityState === "hidden") workbench.flush();
    else workbench.lookElsewhere();
  };
  const leaving = (event: BeforeUnloadEvent) => {
    workbench.flush();
    if (workbench.isAtRisk()) event.preventDefault();
  };
  const stored = (event: StorageEvent) => {
    if (event.key === SHOW_KEY || event.key === null) workbench.lookElsewhere();
  };
  const regular = page.setInterval(() => {
    if (page.document.visibilityState === "visible") workbench.lookElsewhere();
  }, LOOK_INTERVAL);
  page.document.addEventListener("visibilitychange", turned);
  page.addEventListener("beforeunload", leaving);
  page.addEventListener("pagehide", workbench.flush);
  page.addEventListener("pageshow", workbench.lookElsewhere);
  page.addEventListener("storage", stored);
  return () => {
    page.clearInterval(regular);
    page.document.removeEventListener("visibilitychange", turned);
    page.removeEventListener("beforeunload", leaving);
    page.removeEventListener("pagehide", workbench.flush);
    page.removeEventListener("pageshow", workbench.lookElsewhere);
    page.removeEventListener("storage", stored);
  };
}
