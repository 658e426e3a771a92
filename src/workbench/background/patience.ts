/** How long a worker may give no sign of life; it lasts as long as the page. */
const AT_FIRST = 10;
const FACTOR = 3;
const MOST = 810;

let seconds = AT_FIRST;

/** s */
export function patience(): number {
  return seconds;
}

/** Lets every computation take longer from now on, as a slow device needs it. */
export function waitLonger(): void {
  seconds = Math.min(MOST, FACTOR * seconds);
}
