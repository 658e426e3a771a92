/**
 * Texts in a Standard MIDI File. The standard (RP-001) asks for ASCII and lets other character codes
 * be used; what files hold is UTF-8 or, in older ones, Latin-1.
 */

/** Characters; longer names are cut. */
const LONGEST_NAME = 120;
/** A character of UTF-8 has four bytes at most; one more shows that there are more. */
const MOST_BYTES = 4 * (LONGEST_NAME + 1);

/** Control characters, and those that change the direction of the text around them. */
const UNPRINTABLE = /[\p{Cc}\u202a-\u202e\u2066-\u2069]+/gu;

/** The first bytes of a text, cut between two characters where it is UTF-8. */
function head(bytes: Uint8Array): Uint8Array {
  if (bytes.length <= MOST_BYTES) return bytes;
  let end = MOST_BYTES;
  while (end > MOST_BYTES - 3 && (bytes[end] & 0xc0) === 0x80) end--;
  return bytes.subarray(0, end);
}

/** Percent-encoded, because the language's own decoder then rejects text that is not UTF-8. */
function decoded(bytes: Uint8Array): string {
  const codes = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0"));
  try {
    return decodeURIComponent(codes.map((code) => `%${code}`).join(""));
  } catch {
    return Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  }
}

/** A name from the bytes of a text event: one line without control characters, of bounded length. */
export function midiName(bytes: Uint8Array): string {
  const line = decoded(head(bytes)).replace(UNPRINTABLE, " ").replace(/\s+/g, " ").trim();
  const characters = Array.from(line);
  return characters.length > LONGEST_NAME ? `${characters.slice(0, LONGEST_NAME - 1).join("")}…` : line;
}
