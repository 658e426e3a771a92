/** How long a worker may stay silent, s; kept as long as the page is open. */
const AT_FIRST = 10;
const FACTOR = 3;
const MOST = 810;

let seconds = AT_FIRST;

/** s */
export function patience(): number {
  return seconds;
}

/** Allows every computation longer from now on, for slow devices. */
export function waitLonger(): void {
  seconds = Math.min(MOST, FACTOR * seconds);
}
