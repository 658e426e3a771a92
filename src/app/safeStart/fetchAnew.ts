/** Discards the copy of the program that the browser keeps; what the user made is not touched. */
import { SECOND_PLACE } from "../../workbench/keeping/storageKeys";

async function serverAnswers(): Promise<boolean> {
  const page = new URL(window.location.href);
  page.hash = "";
  // under an address that no cache knows
  page.search = `?fresh=${Date.now()}`;
  try {
    return (await fetch(page, { cache: "reload" })).ok;
  } catch {
    return false;
  }
}

/** @returns why it was left as it is; null where the next start fetches the program anew */
export async function discardProgram(): Promise<string | null> {
  if (!(await serverAnswers()))
    return "The server does not answer, so the copy of the program in this browser was left as it is.";
  const workers = (await navigator.serviceWorker?.getRegistrations()) ?? [];
  await Promise.all(workers.map((worker) => worker.unregister()));
  if (typeof caches !== "undefined") {
    const ofProgram = (await caches.keys()).filter((name) => name !== SECOND_PLACE);
    await Promise.all(ofProgram.map((name) => caches.delete(name)));
  }
  return null;
}
