/** ms between two words about progress: more often than ten times a second nobody reads them */
const SHORTEST_INTERVAL = 100;

/** Makes a question, whether something may be told now, that is answered with yes ten times a second at most. */
export function tenTimesASecond(): () => boolean {
  let last = Number.NEGATIVE_INFINITY;
  return () => {
    const now = performance.now();
    if (now - last < SHORTEST_INTERVAL) return false;
    last = now;
    return true;
  };
}
