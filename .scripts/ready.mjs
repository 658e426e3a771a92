import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { hashOf, ROOT, whenChanged } from "./hash.mjs";

/** How npm is called without a shell: npm tells its scripts where it is itself. */
function npmCommand() {
  const path = process.env.npm_execpath;
  if (path?.endsWith("js")) return { command: process.execPath, leading: [path] };
  return { command: process.platform === "win32" ? "npm.cmd" : "npm", leading: [] };
}

function install() {
  process.stderr.write("Installing what the project needs …\n");
  const { command, leading } = npmCommand();
  const done = spawnSync(command, [...leading, "ci", "--no-fund", "--no-audit", "--loglevel=error"], {
    cwd: ROOT,
    stdio: ["ignore", 2, 2],
    shell: command.endsWith(".cmd"),
  });
  if (done.status !== 0) throw new Error("npm ci did not succeed; its own lines above say why.");
}

/** Installs the packages of the lock file unless exactly those are there already. */
export async function ready(work = install) {
  await whenChanged(join("node_modules", ".lock-hash"), hashOf(["package-lock.json"]), work);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    // npm calls this after an install of its own, so that the next start does not install again
    await ready(process.argv.includes("--installed") ? () => {} : install);
  } catch (error) {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  }
}
