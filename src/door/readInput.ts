import { readFileSync, statSync } from "node:fs";
import { resolve } from "node:path";
import { sizeRefusal } from "../design/fileLimits";

/** A path relative to the caller's folder: npm runs a script in the project's folder and passes the original one. */
export function fromCaller(path: string): string {
  return resolve(process.env.INIT_CWD ?? process.cwd(), path);
}

export type ReadInput = { ok: true; bytes: Buffer } | { ok: false; message: string };

/** System errors in words; rarer ones are shown as their code. */
const REASONS: Record<string, string> = {
  ENOENT: "there is no file of this name",
  EISDIR: "it is a folder",
  EACCES: "reading it is not allowed",
};

function reasonOf(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "unknown error";
  return REASONS[code] ?? code;
}

/** A file's content, or one sentence why it is not read; a file of more than `most` bytes is not opened. */
export function readInput(file: string, most: number): ReadInput {
  const path = fromCaller(file);
  try {
    const refusal = sizeRefusal(statSync(path).size, most);
    return refusal ? { ok: false, message: refusal } : { ok: true, bytes: readFileSync(path) };
  } catch (error) {
    return { ok: false, message: `The file cannot be read: ${reasonOf(error)}.` };
  }
}
