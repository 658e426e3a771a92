import { readdirSync, readFileSync } from "node:fs";
import { join, posix, sep } from "node:path";

const SRC = join(import.meta.dirname, "..", "src");

export interface SourceFile {
  /** relative to src, with forward slashes */
  path: string;
  text: string;
  /** relative to src, as far as the project's own files go */
  imports: string[];
  /** of these, what is there at run time within the same thread: no types, no workers */
  uses: string[];
  /** names of packages */
  packages: string[];
}

const IMPORT =
  /(?:^|\n)\s*(?:import|export)\b[^;'"]*?from\s*["']([^"']+)["']|\bimport\s*\(?\s*["']([^"']+)["']|new URL\(\s*["']([^"']+)["']\s*,\s*import\.meta\.url/g;

const OF_TYPES = /(^|\n)\s*import\s+type\b[^;]*;/g;
const OF_WORKERS = /new URL\([^)]*\)/g;

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|\s)\/\/.*$/gm, "$1");
}

function specifiers(text: string): string[] {
  return [...text.matchAll(IMPORT)].map((match) => match[1] ?? match[2] ?? match[3]);
}

/** The file that a relative import means; styles and data keep their ending. */
function resolved(from: string, specifier: string, known: Set<string>): string {
  const base = posix.join(posix.dirname(from), specifier.replace(/\?.*$/, ""));
  return [base, `${base}.ts`, `${base}.tsx`].find((path) => known.has(path)) ?? base;
}

function read(path: string, known: Set<string>): SourceFile {
  const text = withoutComments(readFileSync(join(SRC, path), "utf8"));
  const named = specifiers(text);
  const own = (specifier: string) => specifier.startsWith(".");
  const toFile = (specifier: string) => resolved(path, specifier, known);
  return {
    path,
    text,
    imports: named.filter(own).map(toFile),
    uses: specifiers(text.replace(OF_TYPES, "").replace(OF_WORKERS, "")).filter(own).map(toFile),
    packages: named.filter((specifier) => !own(specifier)),
  };
}

/** Every TypeScript file under src, with what it imports; comments are left out of the text. */
export function sourceFiles(): SourceFile[] {
  const paths = readdirSync(SRC, { recursive: true, encoding: "utf8" })
    .map((path) => path.split(sep).join("/"))
    .filter((path) => /\.tsx?$/.test(path));
  const known = new Set(paths);
  return paths.sort().map((path) => read(path, known));
}

/** The folder of src that a file belongs to. */
export function layerOf(path: string): string {
  return path.split("/")[0];
}
