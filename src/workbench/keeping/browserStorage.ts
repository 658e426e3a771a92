/** The browser's storage; nothing here throws, whatever the browser throws. */

/** The browser's local storage; null if there is none or access is denied. */
export function browserStorage(): Storage | null {
  try {
    return typeof localStorage === "undefined" ? null : localStorage;
  } catch {
    return null;
  }
}

/** Bytes that the browser grants this page; null if unknown. */
export async function grantedBytes(): Promise<number | null> {
  try {
    return (await navigator.storage.estimate()).quota ?? null;
  } catch {
    return null;
  }
}

/**
 * Asks the browser not to clear this page's data when space is short. Its answer changes nothing here and
 * is ignored.
 */
export function askToPersist(): void {
  try {
    navigator.storage.persist().catch(() => undefined);
  } catch {
    // browsers without it have their usual policy
  }
}
