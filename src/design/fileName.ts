/** Names of exported files: valid on every system, and never taken for a formula or a hidden file. */

/** Code points; at four bytes each they leave room for an extension within the 255 bytes of a file name. */
const LONGEST_STEM = 48;

/** Names that Windows reserves for devices, with any extension. */
const RESERVED = /^(con|prn|aux|nul|(com|lpt)\p{Number})$/u;

/**
 * The stem of a file name from a title: letters and digits of any script, words joined by hyphens.
 * Nothing else is kept, so it has no separator, control character, or leading dot or sign.
 */
export function fileStem(title: string): string {
  const words = title
    .normalize("NFKC")
    .toLowerCase()
    .match(/[\p{Letter}\p{Number}][\p{Letter}\p{Number}\p{Mark}]*/gu) ?? ["untitled"];
  const stem = Array.from(words.join("-")).slice(0, LONGEST_STEM).join("").replace(/-$/, "");
  return RESERVED.test(stem) ? `${stem}-file` : stem;
}
