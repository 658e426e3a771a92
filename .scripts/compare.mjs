/**
 * npm run compare -- COMMIT [DESIGNS]: evaluates the examples and random designs, 200 if not told, as the sources stand
 * and as they stood at a commit, through the door, and prints every result that differs. For changes that are to
 * leave the results as they are.
 */
import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { bundled } from "./bundle.mjs";
import { ROOT } from "./hash.mjs";
import { ready } from "./ready.mjs";

/** Relative; the order of a sum may change. */
const SAME = 1e-12;
const MOST_PRINTED = 40;

const [commit = "HEAD", count = "200"] = process.argv.slice(2);
const FOLDER = join(ROOT, "node_modules", ".cache", "compare");
const INSTALLED = join("node_modules", ".lock-hash");
const THEN = join(FOLDER, "then");
const DESIGNS = join(FOLDER, "designs");

function git(...args) {
  const done = spawnSync("git", args, { cwd: ROOT, encoding: "utf8" });
  if (done.status !== 0) throw new Error(done.stderr);
}

/** The sources of the commit; its packages are those around it where the lock file is the same. */
function checkOut() {
  rmSync(THEN, { recursive: true, force: true });
  git("worktree", "prune");
  git("worktree", "add", "--detach", THEN, commit);
  mkdirSync(join(THEN, "node_modules"));
  copyFileSync(join(ROOT, INSTALLED), join(THEN, INSTALLED));
}

/** What the door prints of all designs, from the folder of a state of the program. */
function evaluations(root) {
  const door = spawnSync(process.execPath, [join(root, ".scripts", "door.mjs"), "evaluate", DESIGNS], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 2e9,
  });
  if (door.status !== 0) throw new Error(door.stderr);
  return JSON.parse(door.stdout);
}

/** Paths at which two values differ, with both. */
function differences(then, now, path = "") {
  if (typeof then === "number" && typeof now === "number")
    return Math.abs(then - now) <= SAME * Math.max(Math.abs(then), Math.abs(now))
      ? []
      : [`${path}: ${then} → ${now}`];
  if (then === null || now === null || typeof then !== "object" || typeof now !== "object")
    return then === now ? [] : [`${path}: ${JSON.stringify(then)} → ${JSON.stringify(now)}`];
  const keys = new Set([...Object.keys(then), ...Object.keys(now)]);
  return [...keys].flatMap((key) => differences(then[key], now[key], `${path}.${key}`));
}

await ready();
rmSync(DESIGNS, { recursive: true, force: true });
const { writeDesigns } = await import(
  await bundled(
    "compare/writing",
    "test/compare/writeDesigns.ts",
    ["src", "test/compare", "test/evaluation"],
    false,
  )
);
writeDesigns(DESIGNS, Number(count));
checkOut();
const [then, now] = [evaluations(THEN), evaluations(ROOT)];
git("worktree", "remove", "--force", THEN);
const found = then.flatMap((each, index) => differences(each, now[index], `[${index}]`));
for (const line of found.slice(0, MOST_PRINTED)) console.log(line);
console.log(`${then.length} designs compared with ${commit}: ${found.length} results differ`);
process.exitCode = found.length > 0 ? 1 : 0;
