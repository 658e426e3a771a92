/** Connects a session with events of the page: hiding, leaving, and writes of other tabs. */
import type { Workbench } from "../session/store";
import { SHOW_KEY } from "./storageKeys";

/** ms; there is no event for storage that was cleared in part */
const CHECK_INTERVAL = 10_000;

type Watched = Pick<Workbench, "flush" | "checkStorage" | "isAtRisk">;

/**
 * Saves when the page is hidden or left, asks before the page closes with unsaved changes, and checks for
 * saves of other tabs. Returns the function that ends this.
 */
export function watchPage(workbench: Watched, page: Window): () => void {
  const onVisibilityChange = () => {
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
  const timer = page.setInterval(() => {
    if (page.document.visibilityState === "visible") workbench.checkStorage();
  }, CHECK_INTERVAL);
  page.document.addEventListener("visibilitychange", onVisibilityChange);
  page.addEventListener("beforeunload", leaving);
  page.addEventListener("pagehide", workbench.flush);
  page.addEventListener("pageshow", workbench.checkStorage);
  page.addEventListener("storage", stored);
  return () => {
    page.clearInterval(timer);
    page.document.removeEventListener("visibilitychange", onVisibilityChange);
    page.removeEventListener("beforeunload", leaving);
    page.removeEventListener("pagehide", workbench.flush);
    page.removeEventListener("pageshow", workbench.checkStorage);
    page.removeEventListener("storage", stored);
  };
}
