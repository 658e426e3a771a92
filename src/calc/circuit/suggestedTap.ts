/**
 * The tap at which the primary's resonance meets a frequency, by bisection: the resonance falls as the
 * tap moves out.
 * @param resonanceAt Hz at a tap, falling
 * @param from turns, innermost tap that is tried
 * @param to turns, outermost
 * @returns turns, null where no tap between the two meets the frequency
 */
export function suggestedTap(
  resonanceAt: (tap: number) => number,
  target: number,
  from: number,
  to: number,
): number | null {
  if (!(resonanceAt(from) >= target && resonanceAt(to) <= target)) return null;
  let [low, high] = [from, to];
  while (high - low > 1e-9 * high) {
    const middle = 0.5 * (low + high);
    if (resonanceAt(middle) > target) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}
