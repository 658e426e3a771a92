/** A sensible initial assignment: percussion silent, melody left, accompaniment right. */
import type { Lane } from "./lane";
import type { Score, ScorePart } from "./score";

const FULL_LEVEL = 1;

function middleKey(part: ScorePart): number {
  const keys = part.notes.map((note) => note.key).sort((a, b) => a - b);
  return keys[keys.length >> 1];
}

function lane(part: ScorePart, coil: Lane["coil"]): Lane {
  return { part: part.id, coil, transpose: 0, level: FULL_LEVEL };
}

/**
 * One lane a part, in the order of the parts. Parts that sound are ranked by the middle of their
 * range, the highest going left and the next right in turn (common practice, no source); with a single coil all
 * go left.
 */
export function firstLanes(score: Score, pair: boolean): Lane[] {
  const ranked = score.parts
    .filter((part) => !part.percussion && part.notes.length > 0)
    .sort((a, b) => middleKey(b) - middleKey(a));
  const coilOf = (part: ScorePart): Lane["coil"] => {
    const rank = ranked.indexOf(part);
    if (rank < 0) return "none";
    return pair && rank % 2 === 1 ? "right" : "left";
  };
  return score.parts.map((part) => lane(part, coilOf(part)));
}
