/** The headless door: bundled for Node, started by .scripts/door.mjs, and by itself once a thread. */
import { isMainThread } from "node:worker_threads";
import { evaluateCommand } from "./evaluateCommand";
import { serveFiles } from "./evaluateFiles";

async function main(): Promise<void> {
  const answer = await evaluateCommand(process.argv.slice(3), new URL(import.meta.url));
  process.stdout.write(answer.output);
  for (const complaint of answer.complaints) process.stderr.write(`${complaint}\n`);
  process.exitCode = answer.exitCode;
}

if (isMainThread) await main();
else serveFiles();
