/** ms between progress reports; more than ten a second cannot be read */
const SHORTEST_INTERVAL = 100;

/** Makes a function that returns true at most ten times a second. */
export function tenTimesASecond(): () => boolean {
  let last = Number.NEGATIVE_INFINITY;
  return () => {
    const now = performance.now();
    if (now - last < SHORTEST_INTERVAL) return false;
    last = now;
    return true;
  };
}
