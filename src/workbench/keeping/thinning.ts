/** Decides which versions are removed: with age, and when they exceed their budget. */
import type { VersionSummary } from "./version";

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/** Ages from which one version per span is kept; all younger ones are kept. */
const SPANS: readonly { from: number; span: number }[] = [
  { from: 31 * DAY, span: 7 * DAY },
  { from: DAY, span: DAY },
  { from: HOUR, span: HOUR },
];

/** Versions saved for an event are all kept for a month. */
const SPANS_OF_EVENTS = SPANS.slice(0, 1);

function newestFirst(a: VersionSummary, b: VersionSummary): number {
  return Date.parse(b.at) - Date.parse(a.at);
}

/** The span of time to which a version belongs; null if it is young enough to be kept anyway. */
function spanOf(summary: VersionSummary, now: number): string | null {
  const at = Date.parse(summary.at);
  const rule = (summary.periodic ? SPANS : SPANS_OF_EVENTS).find(({ from }) => now - at >= from);
  if (!rule) return null;
  return [summary.kind, summary.designId, rule.span, Math.floor(at / rule.span)].join(" ");
}

/**
 * The ids to remove because of age: all versions of the last hour are kept, then the newest of each hour for a
 * day, of each day for a month, and of each week after that. Versions in the bin or still to be offered are kept.
 * @param now ms since 1970
 */
export function thinnedOut(summaries: readonly VersionSummary[], now: number): string[] {
  const taken = new Set<string>();
  return summaries
    .filter((summary) => !summary.binned && !summary.offered)
    .sort(newestFirst)
    .filter((summary) => {
      const span = spanOf(summary, now);
      if (span === null) return false;
      if (taken.has(span)) return true;
      taken.add(span);
      return false;
    })
    .map((summary) => summary.id);
}

/** Lower priorities are removed first. */
function priority(summary: VersionSummary): number {
  if (summary.offered) return 3;
  if (summary.binned) return 2;
  return summary.periodic ? 0 : 1;
}

/** Versions in the order of removal: periodic ones, those saved for an event, then the bin; oldest first. */
function inRemovalOrder(summaries: readonly VersionSummary[]): VersionSummary[] {
  return [...summaries].sort((a, b) => priority(a) - priority(b) || newestFirst(b, a));
}

function totalSize(summaries: readonly VersionSummary[]): number {
  return summaries.reduce((sum, { size }) => sum + size, 0);
}

/** The ids to remove, so that the rest does not exceed the budget in bytes. */
export function overBudget(summaries: readonly VersionSummary[], budget: number): string[] {
  let excess = totalSize(summaries) - budget;
  const removed: string[] = [];
  for (const { id, size } of inRemovalOrder(summaries)) {
    if (excess <= 0) break;
    removed.push(id);
    excess -= size;
  }
  return removed;
}

/** The less important half, to remove if the browser's storage is full; a single version is removed. */
export function firstHalf(summaries: readonly VersionSummary[]): string[] {
  return overBudget(summaries, Math.floor(totalSize(summaries) / 2));
}
