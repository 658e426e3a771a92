const DAY = 86_400_000;

const clock = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit" });
const weekday = new Intl.DateTimeFormat("en-GB", { weekday: "long" });
const dayOfYear = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", year: "numeric" });

/** Calendar days from one date to the other. */
function daysBetween(from: Date, to: Date): number {
  const midnight = (date: Date) => Date.UTC(date.getFullYear(), date.getMonth(), date.getDate());
  return Math.round((midnight(to) - midnight(from)) / DAY);
}

function dayOf(at: Date, now: Date): string {
  const days = daysBetween(at, now);
  if (days === 0) return "Today";
  if (days === 1) return "Yesterday";
  return days > 1 && days < 7 ? weekday.format(at) : dayOfYear.format(at);
}

/** The date of a version in words: the day relative to now, and the local time. */
export function versionDate(at: string, now: Date): string {
  const date = new Date(at);
  return Number.isNaN(date.getTime()) ? "At an unknown time" : `${dayOf(date, now)}, ${clock.format(date)}`;
}
