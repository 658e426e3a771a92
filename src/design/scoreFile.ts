/** A score's own bytes within the file of a show: compressed, and checked when they are taken out. */
import * as z from "zod/mini";
import { MOST_SCORE_BYTES, sizeRefusal } from "./fileLimits";

export interface ScoreFile {
  /** bytes of the score as it was opened */
  length: number;
  /** of those bytes, in hexadecimal; also the key under which they are kept */
  sha256: string;
  /** the bytes compressed ("deflate-raw"), as base64. Source: rfc1951. */
  deflated: string;
}

const COMPRESSION = "deflate-raw";

export const scoreFileSchema: z.ZodMiniType<ScoreFile> = z.strictObject({
  length: z
    .int("must be a whole number")
    .check(z.positive("must be above zero"), z.lte(MOST_SCORE_BYTES, `must be at most ${MOST_SCORE_BYTES}`)),
  sha256: z.string().check(z.regex(/^[0-9a-f]{64}$/, "must be 64 hexadecimal digits")),
  deflated: z.string().check(z.minLength(1), z.maxLength(2 * MOST_SCORE_BYTES)),
});

/** SHA-256 of bytes in hexadecimal: the same content has the same key. */
export async function contentKey(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** A call takes some hundred thousand arguments, so characters are made in pieces. */
const PIECE = 0x8000;

function base64(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let start = 0; start < bytes.length; start += PIECE)
    pieces.push(String.fromCharCode(...bytes.subarray(start, start + PIECE)));
  return btoa(pieces.join(""));
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
}

function streamOf(bytes: Uint8Array<ArrayBuffer>): ReadableStream<Uint8Array<ArrayBuffer>> {
  return new Blob([bytes]).stream();
}

function joined(pieces: readonly Uint8Array[], length: number): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/**
 * Everything that a stream gives, as long as it stays within `most` bytes; beyond, the rest is not even
 * unpacked.
 * @returns null where there is more
 */
async function gathered(stream: ReadableStream<Uint8Array>, most: number) {
  const reader = stream.getReader();
  const pieces: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return joined(pieces, length);
    length += value.length;
    if (length > most) {
      await reader.cancel();
      return null;
    }
    pieces.push(value);
  }
}

/** The bytes of a score as the file of a show carries them. */
export async function packScore(bytes: Uint8Array<ArrayBuffer>): Promise<ScoreFile> {
  const packed = await gathered(
    streamOf(bytes).pipeThrough(new CompressionStream(COMPRESSION)),
    Number.POSITIVE_INFINITY,
  );
  return { length: bytes.length, sha256: await contentKey(bytes), deflated: base64(packed ?? bytes) };
}

type UnpackedScore = { ok: true; bytes: Uint8Array<ArrayBuffer> } | { ok: false; message: string };

const DAMAGED: UnpackedScore = {
  ok: false,
  message:
    "The score within this show is damaged: its bytes are not those that were packed. Export the show again where it plays.",
};

/** Takes the bytes out again; those that are damaged, or more than was said, are refused with a sentence. */
export async function unpackScore(file: ScoreFile): Promise<UnpackedScore> {
  const tooLong = sizeRefusal(file.length, MOST_SCORE_BYTES);
  if (tooLong) return { ok: false, message: tooLong };
  try {
    const packed = streamOf(bytesOf(file.deflated));
    const bytes = await gathered(packed.pipeThrough(new DecompressionStream(COMPRESSION)), file.length);
    if (!bytes)
      return {
        ok: false,
        message: `The score within this show unpacks to more than its ${file.length} bytes; it is not opened.`,
      };
    const whole = bytes.length === file.length && (await contentKey(bytes)) === file.sha256;
    return whole ? { ok: true, bytes } : DAMAGED;
  } catch {
    return DAMAGED;
  }
}
