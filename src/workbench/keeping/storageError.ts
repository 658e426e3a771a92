const QUOTA_NAMES = new Set(["QuotaExceededError", "NS_ERROR_DOM_QUOTA_REACHED", "QUOTA_EXCEEDED_ERR"]);
/** The codes of older engines: 22 of the standard, 1014 of Firefox. */
const QUOTA_CODES = new Set<unknown>([22, 1014]);

/**
 * Whether an error says that the browser's storage is full, in any of its spellings: the standard
 * name, its older constant, Firefox's own, and the codes of both.
 */
export function isQuotaError(error: unknown): boolean {
  if (typeof error !== "object" || error === null) return false;
  const { name, code } = error as { name?: unknown; code?: unknown };
  return QUOTA_NAMES.has(String(name)) || QUOTA_CODES.has(code);
}

/** The sentence for a write that the browser refused. */
export function refusedWriteSentence(error: unknown): string {
  return isQuotaError(error)
    ? "The browser's storage for this page is full: export what you need, delete designs, then save again."
    : "The browser refused to save (private window or blocked storage): export the show to keep it.";
}
