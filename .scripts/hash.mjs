import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const ROOT = fileURLToPath(new URL("..", import.meta.url));

function filesUnder(path) {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}

/** One hash over names and contents of the files and folders named, relative to the project. */
export function hashOf(paths) {
  const hash = createHash("sha256");
  for (const file of paths.flatMap((path) => filesUnder(join(ROOT, path)))) {
    hash.update(file.slice(ROOT.length).replaceAll("\\", "/")).update("\0").update(readFileSync(file));
  }
  return hash.digest("hex");
}

function isStamped(stampPath, hash) {
  const stamp = join(ROOT, stampPath);
  return existsSync(stamp) && readFileSync(stamp, "utf8") === hash;
}

function writeStamp(stampPath, hash) {
  const stamp = join(ROOT, stampPath);
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, hash);
}

/** Does the work only when the hash differs from the one that was kept after the last success. */
export async function whenChanged(stampPath, hash, work) {
  if (isStamped(stampPath, hash)) return;
  await work();
  writeStamp(stampPath, hash);
}
