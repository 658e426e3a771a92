import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { hashOf, ROOT, whenChanged } from "./hash.mjs";
import "./quietLoader.mjs";

const SOURCES = [
  "src",
  "test/reference",
  ".scripts/chunks.mjs",
  ".scripts/licences.mjs",
  ".scripts/referenceTable.mjs",
  ".scripts/responseHeaders.mjs",
  "public",
  "index.html",
  "vite.config.ts",
  "tsconfig.json",
  "package-lock.json",
];

/** Calls a program of node_modules with Node itself, so that no shell and no PATH matter. */
export function vite(...args) {
  return [join(ROOT, "node_modules", "vite", "bin", "vite.js"), ...args];
}

/** Whoever asks for the build: under a test's own NODE_ENV the bundle would hold React's development version. */
const PRODUCTION = { ...process.env, NODE_ENV: "production" };

function build() {
  process.stderr.write("Building …\n");
  const done = spawnSync(process.execPath, vite("build", "--logLevel", "warn"), {
    cwd: ROOT,
    stdio: ["ignore", 2, 2],
    env: PRODUCTION,
  });
  if (done.status !== 0) throw new Error("The build did not succeed; the lines above say why.");
}

/** Builds the production version into dist unless exactly these sources are built already. */
export async function ensureBuilt() {
  await whenChanged(join("dist", ".source-hash"), hashOf(SOURCES), build);
}
