import { useEffect, useState } from "react";

/** Parts waiting to be drawn, in order of arrival. */
const waiting: (() => void)[] = [];
let drawing = false;

function drawNext(): void {
  const next = waiting.shift();
  drawing = next !== undefined;
  if (!next) return;
  next();
  // pending input events are handled first
  setTimeout(drawNext);
}

/** Adds a part to the queue; returns the function that removes it. */
function queue(draw: () => void): () => void {
  waiting.push(draw);
  if (!drawing) {
    drawing = true;
    setTimeout(drawNext);
  }
  return () => {
    const place = waiting.indexOf(draw);
    if (place >= 0) waiting.splice(place, 1);
  };
}

/** False until this part may draw: parts with an expensive first render go one at a time, and the page handles input in between. */
export function useQueuedRender(): boolean {
  const [isReady, setReady] = useState(false);
  useEffect(() => queue(() => setReady(true)), []);
  return isReady;
}
