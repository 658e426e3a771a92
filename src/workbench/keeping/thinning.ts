/** Which versions go: with age, and where they take more room than they may. */
import type { VersionSummary } from "./version";

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/** Ages from which one version is kept in each span; younger than the first, all are. */
const SPANS: readonly { from: number; span: number }[] = [
  { from: 31 * DAY, span: 7 * DAY },
  { from: DAY, span: DAY },
  { from: HOUR, span: HOUR },
];

/** What was kept for a reason stays whole for a month. */
const SPANS_OF_EVENTS = SPANS.slice(0, 1);

function newestFirst(a: VersionSummary, b: VersionSummary): number {
  return Date.parse(b.at) - Date.parse(a.at);
}

/** The span of time that a version stands for; null where it is young enough to stay anyway. */
function spanOf(summary: VersionSummary, now: number): string | null {
  const at = Date.parse(summary.at);
  const rule = (summary.periodic ? SPANS : SPANS_OF_EVENTS).find(({ from }) => now - at >= from);
  if (!rule) return null;
  return [summary.kind, summary.designId, rule.span, Math.floor(at / rule.span)].join(" ");
}

/**
 * The ids that age thins out: all of the last hour stay, then the newest of each hour for a day, of each
 * day for a month, of each week after. What lies in the bin or is still to be offered is not thinned.
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

/** Lower goes earlier. */
function worth(summary: VersionSummary): number {
  if (summary.offered) return 3;
  if (summary.binned) return 2;
  return summary.periodic ? 0 : 1;
}

/** Versions in the order in which they may go: made by the clock, then for a reason, then the bin; oldest first. */
function inOrderOfGoing(summaries: readonly VersionSummary[]): VersionSummary[] {
  return [...summaries].sort((a, b) => worth(a) - worth(b) || newestFirst(b, a));
}

function room(summaries: readonly VersionSummary[]): number {
  return summaries.reduce((sum, { size }) => sum + size, 0);
}

/** The ids that go, so that the rest takes no more bytes than the budget. */
export function overBudget(summaries: readonly VersionSummary[], budget: number): string[] {
  let excess = room(summaries) - budget;
  const going: string[] = [];
  for (const { id, size } of inOrderOfGoing(summaries)) {
    if (excess <= 0) break;
    going.push(id);
    excess -= size;
  }
  return going;
}

/** The half that goes first where the browser has no room left; of one, that one. */
export function firstHalf(summaries: readonly VersionSummary[]): string[] {
  return overBudget(summaries, Math.floor(room(summaries) / 2));
}
