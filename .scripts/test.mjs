import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./hash.mjs";
import "./quietLoader.mjs";
import { ready } from "./ready.mjs";

const REPORT = join(ROOT, "node_modules", ".cache", "vitest.json");

const CHECKS = [
  { name: "types", module: "typescript/bin/tsc", args: ["--noEmit"] },
  {
    name: "types of the calculation, without a screen",
    module: "typescript/bin/tsc",
    args: ["-p", "src/calc"],
  },
  { name: "lint and format", module: "@biomejs/biome/bin/biome", args: ["check", "--colors=off"] },
  { name: "dead code", module: "knip/bin/knip.js", args: ["--no-progress"] },
  {
    name: "code that only tests use",
    module: "knip/bin/knip.js",
    args: ["--production", "--no-progress"],
  },
];

/** Runs a program of node_modules with Node itself; everything that it prints is passed on. */
function run(module, args, stdio) {
  return spawnSync(process.execPath, [join(ROOT, "node_modules", module), ...args], {
    cwd: ROOT,
    stdio,
    encoding: "utf8",
    maxBuffer: 1e8,
    env: { ...process.env, TZ: "UTC" },
  });
}

/** One check counts as one test; only a failing one prints what it has to say. */
function check({ name, module, args }) {
  const done = run(module, args, ["ignore", "pipe", "pipe"]);
  const passed = done.status === 0;
  process.stdout.write(`${passed ? "passed" : "FAILED"}: ${name}\n`);
  if (!passed) process.stdout.write(`${done.stdout}${done.stderr}\n`);
  return { passed: Number(passed), failed: Number(!passed) };
}

/** A file that fails before its first test holds no failed test, and must count all the same. */
function brokenFiles(report) {
  return report.testResults.filter(
    (file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"),
  ).length;
}

function tests(args) {
  rmSync(REPORT, { force: true });
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${REPORT}`];
  const done = run("vitest/vitest.mjs", ["run", ...reporters, ...args], ["ignore", "inherit", "inherit"]);
  if (!existsSync(REPORT)) return { passed: 0, failed: 1 };
  const report = JSON.parse(readFileSync(REPORT, "utf8"));
  const failed = report.numFailedTests + brokenFiles(report);
  const silent = failed === 0 && (done.status !== 0 || report.numPassedTests === 0);
  return { passed: report.numPassedTests, failed: silent ? 1 : failed };
}

function total(results) {
  const sum = (key) => results.reduce((so, result) => so + result[key], 0);
  return { passed: sum("passed"), failed: sum("failed") };
}

try {
  await ready();
} catch (error) {
  process.stderr.write(`${error.message}\n0 passed, 1 failed\n`);
  process.exit(1);
}
const { passed, failed } = total([...CHECKS.map(check), tests(process.argv.slice(2))]);
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 ? 0 : 1;
