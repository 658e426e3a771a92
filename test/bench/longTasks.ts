/** What keeps the page's main thread busy, told by the browser itself. */
import type { Page } from "playwright-core";

interface Watched {
  longTasks: number[];
}

/** Begins to note every task of more than 50 ms. */
export async function watchLongTasks(page: Page): Promise<void> {
  await page.evaluate(() => {
    const seen: number[] = [];
    Object.assign(window, { longTasks: seen });
    const note = (list: PerformanceObserverEntryList) =>
      seen.push(...list.getEntries().map((entry) => entry.duration));
    new PerformanceObserver(note).observe({ type: "longtask" });
  });
}

/** ms of the longest task since the watch began; 0 where none took more than 50 ms. */
export async function longestTask(page: Page): Promise<number> {
  // the browser tells of a task after it
  await page.waitForTimeout(200);
  return page.evaluate(() => Math.max(0, ...(window as unknown as Watched).longTasks));
}

/** In words. */
export function inWords(longest: number): string {
  return longest > 0 ? `${longest.toFixed(0)} ms` : "below 50 ms";
}

/** The value that so large a part of the values do not pass. */
export function percentile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? 0;
}
