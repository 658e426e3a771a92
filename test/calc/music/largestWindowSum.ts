/** Gates, times in ns. */
interface Gates {
  starts: ArrayLike<number>;
  onTimes: ArrayLike<number>;
}

/** The largest on-time, in ns, within any window: it ends where a pulse ends. */
export function largestWindowSum({ starts, onTimes }: Gates, window: number): number {
  let largest = 0;
  for (let last = 0; last < starts.length; last++) {
    const from = starts[last] + onTimes[last] - window;
    let sum = 0;
    for (let index = last; index >= 0 && starts[index] + onTimes[index] > from; index--) {
      sum += starts[index] + onTimes[index] - Math.max(from, starts[index]);
    }
    largest = Math.max(largest, sum);
  }
  return largest;
}
