/** Limits that a file must meet before it is parsed, so that parsing takes bounded time and memory. */

const MEBIBYTE = 2 ** 20;

/** A show of two hundred designs with the longest notes and its score takes about 28 MiB. */
export const MOST_DOCUMENT_BYTES = 32 * MEBIBYTE;
/** A score of a million events takes 4 MiB to 8 MiB. */
export const MOST_SCORE_BYTES = 16 * MEBIBYTE;

/** A design's deepest value is seven levels down in a show. */
const DEEPEST = 32;
/** Over twice the largest show: two hundred designs of 250 values, 4096 lanes of five. */
const MOST_VALUES = 200_000;

/** Why a file of this size is not read; null if it is. */
export function sizeRefusal(bytes: number, most: number): string | null {
  if (bytes <= most) return null;
  const size = (bytes / MEBIBYTE).toFixed(1);
  return `The file has ${size} MiB; the limit is ${most / MEBIBYTE} MiB: choose another file, or remove what makes it so large.`;
}

interface Extent {
  depth: number;
  values: number;
}

/** The nesting depth of a JSON text and roughly its number of values, without parsing it. */
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

/** Why a JSON text of this length and extent is not read; null if it is. */
export function extentRefusal(text: string): string | null {
  const tooLong = sizeRefusal(text.length, MOST_DOCUMENT_BYTES);
  if (tooLong) return tooLong;
  const { depth, values } = extentOf(text);
  if (depth > DEEPEST)
    return `The file is nested ${depth} levels deep; the limit is ${DEEPEST}, and no design or show needs more: choose another file.`;
  if (values <= MOST_VALUES) return null;
  return `The file holds about ${values} values; the limit is ${MOST_VALUES}, and no design or show needs more: choose another file.`;
}
