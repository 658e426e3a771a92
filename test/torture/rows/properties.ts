/** The properties of `npm test`, each with many times as many cases from another seed. */
import { spawn } from "node:child_process";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { RowResult, TortureRow } from "../row";

/** What is used of the test runner's report. */
interface Report {
  numTotalTests: number;
  numFailedTests: number;
  testResults: {
    name: string;
    assertionResults: { status: string; fullName: string; duration?: number }[];
  }[];
}

const MOST_SHOWN = 20;

function finished(folder: string, times: number, seed: number): Promise<void> {
  const args = ["run", "--project", "unit", "--testTimeout", "0", "--reporter", "json"];
  const child = spawn(
    process.execPath,
    [join("node_modules", "vitest", "vitest.mjs"), ...args, "--outputFile", join(folder, "report.json")],
    {
      stdio: "ignore",
      env: { ...process.env, TZ: "UTC", PROPERTY_TIMES: String(times), PROPERTY_SEED: String(seed) },
    },
  );
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", () => resolve());
  });
}

function resultOf({ numTotalTests, numFailedTests, testResults }: Report, times: number): RowResult {
  const tests = testResults.flatMap(({ assertionResults }) => assertionResults);
  const failed = tests.filter(({ status }) => status === "failed");
  const slowest = Math.max(0, ...tests.map(({ duration }) => duration ?? 0));
  return {
    tried: numTotalTests,
    lost: numFailedTests,
    worst: `tests with ${times} times the cases, slowest ${(slowest / 1000).toFixed(0)} s`,
    losses: failed.slice(0, MOST_SHOWN).map(({ fullName }) => fullName),
  };
}

export const properties: TortureRow = {
  name: "properties with more cases",
  full: 10,
  short: 0,
  async run(times, seed) {
    const folder = await mkdtemp(join(tmpdir(), "coilwright-properties-"));
    await finished(folder, times, seed);
    const report: Report = JSON.parse(await readFile(join(folder, "report.json"), "utf8"));
    await rm(folder, { recursive: true });
    return resultOf(report, times);
  },
};
