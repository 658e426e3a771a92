/** Exports stored data as files, whatever its state. */
import type { KeptVersion } from "./keptVersions";
import { readEntries } from "./readKept";
import { readStores } from "./readStores";

function base64(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

function bytesOf(value: unknown): Uint8Array | null {
  if (ArrayBuffer.isView(value)) return new Uint8Array(value.buffer, value.byteOffset, value.byteLength);
  return value instanceof ArrayBuffer ? new Uint8Array(value) : null;
}

/** JSON cannot hold bytes, so they are written as base64. */
function inJson(_: string, value: unknown): unknown {
  const bytes = bytesOf(value);
  return bytes ? { base64: base64(bytes) } : value;
}

/** Everything that is stored for this program, as one JSON text. */
export async function everythingKept(now: Date): Promise<string> {
  const databases = await readStores();
  const localStorage = Object.fromEntries(readEntries().map(({ key, text }) => [key, text]));
  return JSON.stringify(
    { app: "coilwright", exportedAt: now.toISOString(), localStorage, databases },
    inJson,
    2,
  );
}

/** A file name that is safe on every system and in spreadsheets. */
export function safeFileName(title: string, extension: string): string {
  const name = title
    .match(/[\p{Letter}\p{Number}]+/gu)
    ?.join("-")
    .toLowerCase()
    .slice(0, 80);
  return `${name ?? "kept"}.${extension}`;
}

/** The version as the program would export it; its stored text if it cannot be read. */
export function versionFile(version: KeptVersion): { fileName: string; text: string } {
  if (!version.document) return { fileName: "kept-text.json", text: version.text };
  return {
    fileName: safeFileName(version.title, `coilwright-${version.kind}.json`),
    text: `${JSON.stringify(version.document, null, 2)}\n`,
  };
}

export function saveFile({ fileName, text }: { fileName: string; text: string }) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
