/** What the browser offers for keeping things; everything here answers, whatever the browser throws. */

/** The browser's local storage, or null where there is none or reading it is forbidden. */
export function browserStorage(): Storage | null {
  try {
    return typeof localStorage === "undefined" ? null : localStorage;
  } catch {
    return null;
  }
}

/** Bytes that the browser grants this page; null where it does not say. */
export async function grantedBytes(): Promise<number | null> {
  try {
    return (await navigator.storage.estimate()).quota ?? null;
  } catch {
    return null;
  }
}

/**
 * Asks the browser not to clear this page's data when it is short of room. Whether it agrees changes
 * nothing here, so its answer is not told.
 */
export function askToPersist(): void {
  try {
    navigator.storage.persist().catch(() => undefined);
  } catch {
    // a browser without it keeps things as it always did
  }
}
