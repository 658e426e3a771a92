/** Where a worker of each kind starts. */
import type { WorkerLike } from "./runner";

/** What starts a worker, or null where there are no workers. */
function whereWorkers(start: () => WorkerLike): (() => WorkerLike) | null {
  return typeof Worker === "undefined" ? null : start;
}

export const startEvaluation = whereWorkers(
  () => new Worker(new URL("./evaluation.worker.ts", import.meta.url), { type: "module" }),
);

export const startEnergySweep = whereWorkers(
  () => new Worker(new URL("./energySweep.worker.ts", import.meta.url), { type: "module" }),
);

export const startPair = whereWorkers(
  () => new Worker(new URL("./pair.worker.ts", import.meta.url), { type: "module" }),
);

export const startCoilLoads = whereWorkers(
  () => new Worker(new URL("./coilLoads.worker.ts", import.meta.url), { type: "module" }),
);

export const startQuietLead = whereWorkers(
  () => new Worker(new URL("./quietLead.worker.ts", import.meta.url), { type: "module" }),
);

export const startScore = whereWorkers(
  () => new Worker(new URL("./score.worker.ts", import.meta.url), { type: "module" }),
);

export const startScoreReading = whereWorkers(
  () => new Worker(new URL("./scoreReading.worker.ts", import.meta.url), { type: "module" }),
);

export const startGateFile = whereWorkers(
  () => new Worker(new URL("./gateFile.worker.ts", import.meta.url), { type: "module" }),
);
