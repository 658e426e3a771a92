/** The headless door: bundled for Node and started by .scripts/door.mjs, and by itself for each worker thread. */
import { isMainThread } from "node:worker_threads";
import { type Answer, evaluateCommand } from "./evaluateCommand";
import { serveFiles } from "./evaluateFiles";
import { asksForNetlist, netlistCommand } from "./netlistCommand";
import { asksForShow, scheduleCommand, scheduleShow } from "./scheduleCommand";

async function answerTo(command: string | undefined, given: string[]): Promise<Answer> {
  if (command === "schedule") return asksForShow(given) ? scheduleShow(given[0]) : scheduleCommand(given);
  if (asksForNetlist(given)) return netlistCommand(given);
  return evaluateCommand(given, new URL(import.meta.url));
}

async function main(): Promise<void> {
  const [command, ...given] = process.argv.slice(2);
  const answer = await answerTo(command, given);
  process.stdout.write(answer.output);
  for (const complaint of answer.complaints) process.stderr.write(`${complaint}\n`);
  process.exitCode = answer.exitCode;
}

if (isMainThread) await main();
else serveFiles();
