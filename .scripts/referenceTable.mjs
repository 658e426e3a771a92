import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { hashOf, ROOT } from "./hash.mjs";

const SOURCES = ["src/calc", "test/reference", "package-lock.json", ".scripts/referenceTable.mjs"];
const HOME = join(ROOT, "node_modules", ".cache", "reference-table");

/** Bundles the checks for Node and runs them. */
async function computed(hash) {
  const { build } = await import("vite");
  const outDir = join(HOME, `bundle-${hash.slice(0, 16)}-${process.pid}`);
  await build({
    configFile: false,
    root: ROOT,
    logLevel: "error",
    publicDir: false,
    build: {
      ssr: join(ROOT, "test", "reference", "referenceTable.ts"),
      outDir,
      emptyOutDir: true,
      rolldownOptions: { output: { entryFileNames: "referenceTable.mjs" } },
    },
  });
  const { referenceTable } = await import(pathToFileURL(join(outDir, "referenceTable.mjs")).href);
  rmSync(outDir, { recursive: true });
  return JSON.stringify(referenceTable());
}

/** Moves a finished file into place, so that a run that was broken off leaves nothing half done. */
function keep(path, text) {
  const aside = `${path}.${process.pid}`;
  mkdirSync(HOME, { recursive: true });
  writeFileSync(aside, text);
  renameSync(aside, path);
}

/** The table as JSON, computed only when the calculation or its references have changed. */
async function table() {
  const hash = hashOf(SOURCES);
  const path = join(HOME, `${hash}.json`);
  if (existsSync(path)) return readFileSync(path, "utf8");
  const text = await computed(hash);
  keep(path, text);
  return text;
}

const NAME = "virtual:reference-table";
const RESOLVED = `\0${NAME}`;

/** Gives the page `virtual:reference-table`, this project beside published and computed references. */
export function referenceTable() {
  return {
    name: "reference-table",
    resolveId: (id) => (id === NAME ? RESOLVED : undefined),
    load: async (id) =>
      id === RESOLVED
        ? `export const REFERENCE_TABLE = JSON.parse(${JSON.stringify(await table())});`
        : undefined,
  };
}
