/** The headless door: bundled for Node, started by .scripts/door.mjs, and by itself once a thread. */
import { isMainThread } from "node:worker_threads";
import { evaluateCommand } from "./evaluateCommand";
import { serveFiles } from "./evaluateFiles";
import { scheduleCommand } from "./scheduleCommand";

async function main(): Promise<void> {
  const [command, ...given] = process.argv.slice(2);
  const answer =
    command === "schedule" ? scheduleCommand(given) : await evaluateCommand(given, new URL(import.meta.url));
  process.stdout.write(answer.output);
  for (const complaint of answer.complaints) process.stderr.write(`${complaint}\n`);
  process.exitCode = answer.exitCode;
}

if (isMainThread) await main();
else serveFiles();
