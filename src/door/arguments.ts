import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { fromCaller } from "./readInput";

const USAGE = "Usage: npm run --silent evaluate -- design.json [more.json … | folder]";

export type Asked =
  | { ok: true; files: string[] /** prints the evaluation itself instead of a list */; single: boolean }
  | { ok: false; message: string };

export function isFolder(path: string): boolean {
  return existsSync(fromCaller(path)) && statSync(fromCaller(path)).isDirectory();
}

function designsIn(folder: string): string[] {
  return readdirSync(fromCaller(folder))
    .filter((name) => name.endsWith(".json"))
    .sort()
    .map((name) => join(folder, name));
}

/** The requested files; a folder means its JSON files in the order of their names. */
export function readArguments(given: string[]): Asked {
  const option = given.find((argument) => argument.startsWith("-"));
  if (option) return { ok: false, message: `The option ${option} is not known. ${USAGE}` };
  if (given.length === 0) return { ok: false, message: `No design is named. ${USAGE}` };
  const empty = given.find((path) => isFolder(path) && designsIn(path).length === 0);
  if (empty) return { ok: false, message: `${empty}: the folder holds no JSON file.` };
  const files = given.flatMap((path) => (isFolder(path) ? designsIn(path) : [path]));
  return { ok: true, files, single: given.length === 1 && !isFolder(given[0]) };
}
