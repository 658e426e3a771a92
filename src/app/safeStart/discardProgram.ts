/** Deletes the browser's cached copy of the program; the user's data stay. */
import { SECOND_PLACE } from "../../workbench/keeping/storageKeys";

async function serverAnswers(): Promise<boolean> {
  const page = new URL(window.location.href);
  page.hash = "";
  // a URL that is in no cache
  page.search = `?fresh=${Date.now()}`;
  try {
    return (await fetch(page, { cache: "reload" })).ok;
  } catch {
    return false;
  }
}

/** @returns why the copy was left in place; null if the next start downloads the program again */
export async function discardProgram(): Promise<string | null> {
  if (!(await serverAnswers()))
    return "The server does not respond, so the program's copy in this browser was left unchanged. Try again later.";
  const workers = (await navigator.serviceWorker?.getRegistrations()) ?? [];
  await Promise.all(workers.map((worker) => worker.unregister()));
  if (typeof caches !== "undefined") {
    const programCaches = (await caches.keys()).filter((name) => name !== SECOND_PLACE);
    await Promise.all(programCaches.map((name) => caches.delete(name)));
  }
  return null;
}
