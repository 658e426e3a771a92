import { useEffect, useState } from "react";

/** What waits to be drawn, first come, first drawn. */
const waiting: (() => void)[] = [];
let underWay = false;

function drawNext(): void {
  const next = waiting.shift();
  underWay = next !== undefined;
  if (!next) return;
  next();
  // what was typed or pressed meanwhile is answered first
  setTimeout(drawNext);
}

/** Takes a place in the line; returns what leaves it. */
function queue(draw: () => void): () => void {
  waiting.push(draw);
  if (!underWay) {
    underWay = true;
    setTimeout(drawNext);
  }
  return () => {
    const place = waiting.indexOf(draw);
    if (place >= 0) waiting.splice(place, 1);
  };
}

/** False until it is this part's turn: parts that are costly to draw first come one at a time, and the page answers between. */
export function useTurn(): boolean {
  const [isMine, setMine] = useState(false);
  useEffect(() => queue(() => setMine(true)), []);
  return isMine;
}
