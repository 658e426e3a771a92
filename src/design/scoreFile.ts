/** A score's bytes within the file of a show: compressed, and checked when they are unpacked. */
import * as z from "zod/mini";
import { MOST_SCORE_BYTES, sizeRefusal } from "./fileLimits";

export interface ScoreFile {
  /** bytes of the original score */
  length: number;
  /** of those bytes, in hexadecimal; also the key under which they are stored */
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

/** A call takes some hundred thousand arguments at most, so bytes are converted in chunks. */
const CHUNK = 0x8000;

function base64(bytes: Uint8Array): string {
  const chunks: string[] = [];
  for (let start = 0; start < bytes.length; start += CHUNK)
    chunks.push(String.fromCharCode(...bytes.subarray(start, start + CHUNK)));
  return btoa(chunks.join(""));
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
 * All bytes of a stream, up to `most`; beyond that it is cancelled.
 * @returns null if there are more
 */
async function readAll(stream: ReadableStream<Uint8Array>, most: number) {
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

/** The bytes of a score as stored in the file of a show. */
export async function packScore(bytes: Uint8Array<ArrayBuffer>): Promise<ScoreFile> {
  const packed = await readAll(
    streamOf(bytes).pipeThrough(new CompressionStream(COMPRESSION)),
    Number.POSITIVE_INFINITY,
  );
  return { length: bytes.length, sha256: await contentKey(bytes), deflated: base64(packed ?? bytes) };
}

type UnpackedScore = { ok: true; bytes: Uint8Array<ArrayBuffer> } | { ok: false; message: string };

const DAMAGED: UnpackedScore = {
  ok: false,
  message:
    "The score in this show is damaged: its bytes are not those that were packed. Export the show again where its score still plays.",
};

/** Unpacks the bytes; damaged bytes, or more than the stated length, are refused with a sentence. */
export async function unpackScore(file: ScoreFile): Promise<UnpackedScore> {
  const tooLong = sizeRefusal(file.length, MOST_SCORE_BYTES);
  if (tooLong) return { ok: false, message: tooLong };
  try {
    const packed = streamOf(bytesOf(file.deflated));
    const bytes = await readAll(packed.pipeThrough(new DecompressionStream(COMPRESSION)), file.length);
    if (!bytes)
      return {
        ok: false,
        message: `The score in this show unpacks to more than the ${file.length} bytes it states: export the show again where its score still plays.`,
      };
    const whole = bytes.length === file.length && (await contentKey(bytes)) === file.sha256;
    return whole ? { ok: true, bytes } : DAMAGED;
  } catch {
    return DAMAGED;
  }
}
