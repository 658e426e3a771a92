/** What a file may be before it is looked into; whatever passes is read in bounded time and memory. */

const MEBIBYTE = 2 ** 20;

/** A show of two hundred designs with the longest notes, and its score, has some 28 MiB. */
export const MOST_DOCUMENT_BYTES = 32 * MEBIBYTE;
/** A score of a million events has 4 MiB to 8 MiB. */
export const MOST_SCORE_BYTES = 16 * MEBIBYTE;

/** A design's deepest value lies seven levels down in a show. */
const DEEPEST = 32;
/** Twice what the largest show holds: two hundred designs of 250 values, 4096 lanes of five. */
const MOST_VALUES = 200_000;

/** Why a file of this size is not read; null where it is. */
export function sizeRefusal(bytes: number, most: number): string | null {
  if (bytes <= most) return null;
  const size = (bytes / MEBIBYTE).toFixed(1);
  return `The file has ${size} MiB, and at most ${most / MEBIBYTE} MiB are read: choose the file that was meant, or take out what makes it so long.`;
}

interface Extent {
  depth: number;
  values: number;
}

/** How deep a JSON text is nested and about how many values it holds, without taking it apart. */
function extentOf(text: string): Extent {
  const extent = { depth: 0, values: 0 };
  let depth = 0;
  let quoted = false;
  for (let index = 0; index < text.length; index++) {
    const character = text[index];
    if (quoted) {
      if (character === "\\") index++;
      else if (character === '"') quoted = false;
    } else if (character === '"') quoted = true;
    else if (character === "[" || character === "{") {
      depth++;
      extent.values++;
      extent.depth = Math.max(extent.depth, depth);
    } else if (character === "]" || character === "}") depth--;
    else if (character === ",") extent.values++;
  }
  return extent;
}

/** Why a JSON text of this length and extent is not read; null where it is. */
export function extentRefusal(text: string): string | null {
  const tooLong = sizeRefusal(text.length, MOST_DOCUMENT_BYTES);
  if (tooLong) return tooLong;
  const { depth, values } = extentOf(text);
  if (depth > DEEPEST)
    return `The file is nested ${depth} levels deep, and ${DEEPEST} are read: no design or show needs more.`;
  if (values <= MOST_VALUES) return null;
  return `The file holds some ${values} values, and at most ${MOST_VALUES} are read: no design or show needs more.`;
}
