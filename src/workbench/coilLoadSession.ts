/** What bursts cost, as it is worked out beside the page: one request under way, one that waits. */
import { createStore } from "zustand/vanilla";
import { coilLoads } from "./coilLoading";
import type { CoilDesigns, CoilLoads } from "./scoreScheduling";

interface LoadState {
  /** null before the first */
  loads: CoilLoads | null;
  /** what the loads belong to */
  designs: CoilDesigns | null;
}

export const loadStore = createStore<LoadState>(() => ({ loads: null, designs: null }));

let worker: Worker | null = null;
let underWay: CoilDesigns | null = null;
let waiting: CoilDesigns | null = null;

function settle(loads: CoilLoads): void {
  loadStore.setState({ loads, designs: underWay });
  underWay = null;
  const next = waiting;
  waiting = null;
  if (next) askLoads(next);
}

function start(): Worker {
  const started = new Worker(new URL("./coilLoads.worker.ts", import.meta.url), { type: "module" });
  started.onmessage = (event: MessageEvent<CoilLoads>) => settle(event.data);
  started.onerror = () => {
    started.terminate();
    worker = null;
    settle({ left: null, right: null });
  };
  return started;
}

/** Asks for the loads of designs; the answer comes into the store. */
export function askLoads(designs: CoilDesigns): void {
  if (typeof Worker === "undefined") loadStore.setState({ loads: coilLoads(designs), designs });
  else if (underWay) waiting = designs;
  else {
    underWay = designs;
    worker ??= start();
    worker.postMessage(designs);
  }
}
