/** Starts a worker of each kind. The code of its job is loaded by the worker alone, not by the page. */
import type { WorkerLike } from "./runner";

export function startEvaluation(): WorkerLike {
  return new Worker(new URL("./evaluation.worker.ts", import.meta.url), { type: "module" });
}

export function startEnergySweep(): WorkerLike {
  return new Worker(new URL("./energySweep.worker.ts", import.meta.url), { type: "module" });
}

export function startPair(): WorkerLike {
  return new Worker(new URL("./pair.worker.ts", import.meta.url), { type: "module" });
}

export function startCoilLoads(): WorkerLike {
  return new Worker(new URL("./coilLoads.worker.ts", import.meta.url), { type: "module" });
}

export function startQuietLead(): WorkerLike {
  return new Worker(new URL("./quietLead.worker.ts", import.meta.url), { type: "module" });
}

export function startScore(): WorkerLike {
  return new Worker(new URL("./score.worker.ts", import.meta.url), { type: "module" });
}

export function startScoreReading(): WorkerLike {
  return new Worker(new URL("./scoreReading.worker.ts", import.meta.url), { type: "module" });
}

export function startGateFile(): WorkerLike {
  return new Worker(new URL("./gateFile.worker.ts", import.meta.url), { type: "module" });
}

export function startNetlist(): WorkerLike {
  return new Worker(new URL("./netlist.worker.ts", import.meta.url), { type: "module" });
}
