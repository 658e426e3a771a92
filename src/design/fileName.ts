/** Names of exported files: safe on every system, and never read as a formula or a hidden file. */

/** Code points; of four bytes each they leave room for an ending within the 255 bytes that file systems take. */
const LONGEST_STEM = 48;

/** Names that Windows keeps for devices, whatever ending follows. */
const RESERVED = /^(con|prn|aux|nul|(com|lpt)\p{Number})$/u;

/**
 * The first part of a file's name from a title: letters and digits of any script, words joined by
 * hyphens. It holds nothing else, so no separator, control character, leading point or sign gets in.
 */
export function fileStem(title: string): string {
  const words = title
    .normalize("NFKC")
    .toLowerCase()
    .match(/[\p{Letter}\p{Number}][\p{Letter}\p{Number}\p{Mark}]*/gu) ?? ["untitled"];
  const stem = Array.from(words.join("-")).slice(0, LONGEST_STEM).join("").replace(/-$/, "");
  return RESERVED.test(stem) ? `${stem}-file` : stem;
}
