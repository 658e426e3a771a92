/** Workers for the tests of the screen: each job runs at once, in place, and the page hears of it as of any worker. */

import { designQuietLead } from "../src/evaluation/switches/quietLead";
import { coilLoadsJob } from "../src/workbench/background/coilLoadsJob";
import { energySweepJob } from "../src/workbench/background/energySweepJob";
import { evaluationJob } from "../src/workbench/background/evaluationJob";
import { gateFileJob } from "../src/workbench/background/gateFileJob";
import { netlistJob } from "../src/workbench/background/netlistJob";
import { pairJob } from "../src/workbench/background/pairJob";
import type { Job } from "../src/workbench/background/protocol";
import type { WorkerLike } from "../src/workbench/background/runner";
import { scoreJob } from "../src/workbench/background/scoreJob";
import { scoreReadingJob } from "../src/workbench/background/scoreReadingJob";
import { serve } from "../src/workbench/background/serve";

/** A worker that does a job in place. */
export function inPlace<Request, Result, Part = never>(job: Job<Request, Result, Part>): WorkerLike {
  const page = new EventTarget();
  const worker = new EventTarget();
  serve(job, undefined, {
    addEventListener: (type, listener) =>
      worker.addEventListener(type, (event) => event instanceof MessageEvent && listener(event)),
    postMessage: (data) => page.dispatchEvent(new MessageEvent("message", { data })),
  });
  return {
    postMessage: (data: unknown) => worker.dispatchEvent(new MessageEvent("message", { data })),
    addEventListener: page.addEventListener.bind(page),
    terminate: () => undefined,
  };
}

const STARTS: Record<string, () => WorkerLike> = {
  evaluation: () => inPlace(evaluationJob),
  energySweep: () => inPlace(energySweepJob),
  pair: () => inPlace(pairJob),
  coilLoads: () => inPlace(coilLoadsJob),
  quietLead: () => inPlace(designQuietLead),
  score: () => inPlace(scoreJob),
  scoreReading: () => inPlace(scoreReadingJob),
  gateFile: () => inPlace(gateFileJob),
  netlist: () => inPlace(netlistJob),
};

/** What a page starts where its workers run in place. */
export class InPlaceWorker {
  constructor(url: URL) {
    const name = /([^/]+)\.worker\.ts/.exec(url.pathname)?.[1] ?? "";
    Object.assign(this, STARTS[name]());
  }
}
