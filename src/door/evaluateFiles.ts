import { availableParallelism } from "node:os";
import { parentPort, Worker } from "node:worker_threads";
import { evaluateFile } from "./evaluateFile";
import type { Outcome } from "./outcome";

/** In a thread of its own: evaluates each file that is sent and sends back what became of it. */
export function serveFiles(): void {
  parentPort?.on("message", (file: string) => parentPort?.postMessage(evaluateFile(file)));
}

/** Lets one thread work through what is left of the list. */
function workThrough(
  program: URL,
  next: () => number,
  files: string[],
  outcomes: Outcome[][],
): Promise<void> {
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
 * Evaluates every file, spread over the machine's cores; the order of the outcomes is that of the files.
 * @param program the bundled door, which serves files when it is started as a thread
 */
export async function evaluateFiles(files: string[], program: URL): Promise<Outcome[]> {
  if (files.length === 1) return evaluateFile(files[0]);
  const outcomes: Outcome[][] = new Array(files.length);
  let taken = 0;
  const threads = Math.min(availableParallelism(), files.length);
  const work = () => workThrough(program, () => taken++, files, outcomes);
  await Promise.all(Array.from({ length: threads }, work));
  return outcomes.flat();
}
