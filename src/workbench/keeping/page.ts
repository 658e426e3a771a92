/** What the page tells a session: that it goes away, or that another tab has written. */
import type { Workbench } from "../session/store";
import { SHOW_KEY } from "./storageKeys";

/** ms; browsers do not tell a page that parts of its storage were cleared */
const LOOK_INTERVAL = 10_000;

type Watched = Pick<Workbench, "flush" | "checkStorage" | "isAtRisk">;

/**
 * Saves when the page is hidden or left, asks before it closes over something that is not saved, and
 * looks at what other tabs save. Returns what ends it.
 */
export function watchPage(workbench: Watched, page: Window): () => void {
  const turned = () => {
    if (page.document.visibilityState === "hidden") workbench.flush();
    else workbench.checkStorage();
  };
  const leaving = (event: BeforeUnloadEvent) => {
    workbench.flush();
    if (workbench.isAtRisk()) event.preventDefault();
  };
  const stored = (event: StorageEvent) => {
    if (event.key === SHOW_KEY || event.key === null) workbench.checkStorage();
  };
  const regular = page.setInterval(() => {
    if (page.document.visibilityState === "visible") workbench.checkStorage();
  }, LOOK_INTERVAL);
  page.document.addEventListener("visibilitychange", turned);
  page.addEventListener("beforeunload", leaving);
  page.addEventListener("pagehide", workbench.flush);
  page.addEventListener("pageshow", workbench.checkStorage);
  page.addEventListener("storage", stored);
  return () => {
    page.clearInterval(regular);
    page.document.removeEventListener("visibilitychange", turned);
    page.removeEventListener("beforeunload", leaving);
    page.removeEventListener("pagehide", workbench.flush);
    page.removeEventListener("pageshow", workbench.checkStorage);
    page.removeEventListener("storage", stored);
  };
}
