import { availableParallelism } from "node:os";
import { parentPort, Worker } from "node:worker_threads";
import { evaluateFile } from "./evaluateFile";
import type { Outcome } from "./outcome";

/** Runs in a worker thread: evaluates each file it is sent and posts the outcomes. */
export function serveFiles(): void {
  parentPort?.on("message", (file: string) => parentPort?.postMessage(evaluateFile(file)));
}

/** Runs one worker thread that takes files from the list until none is left. */
function runThread(program: URL, next: () => number, files: string[], outcomes: Outcome[][]): Promise<void> {
  return new Promise((done, fail) => {
    const thread = new Worker(program);
    let current = -1;
    function proceed(): void {
      current = next();
      if (current < files.length) thread.postMessage(files[current]);
      else thread.terminate().then(() => done(), fail);
    }
    thread.on("message", (ofFile: Outcome[]) => {
      outcomes[current] = ofFile;
      proceed();
    });
    thread.on("error", fail);
    proceed();
  });
}

/**
 * Evaluates every file, spread over the machine's cores; the outcomes are in the order of the files.
 * @param program the bundled door, which serves files when it runs as a thread
 */
export async function evaluateFiles(files: string[], program: URL): Promise<Outcome[]> {
  if (files.length === 1) return evaluateFile(files[0]);
  const outcomes: Outcome[][] = new Array(files.length);
  let taken = 0;
  const threads = Math.min(availableParallelism(), files.length);
  const work = () => runThread(program, () => taken++, files, outcomes);
  await Promise.all(Array.from({ length: threads }, work));
  return outcomes.flat();
}
