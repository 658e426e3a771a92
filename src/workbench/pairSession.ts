/** The pair as it is computed beside the page: one request under way, one that waits, the newest wins. */
import { createStore } from "zustand/vanilla";
import type { PairOutcome } from "../evaluation/pair";
import { type PairRequest, pairOutcome } from "./pairing";

interface PairState {
  /** null before the first */
  outcome: PairOutcome | null;
  /** what the outcome belongs to */
  request: PairRequest | null;
}

export const pairStore = createStore<PairState>(() => ({ outcome: null, request: null }));

const FAILED: PairOutcome = {
  ok: false,
  message: "The pair could not be computed: change a figure of either coil, or load the page again.",
};

let worker: Worker | null = null;
let underWay: PairRequest | null = null;
let waiting: PairRequest | null = null;

function settle(outcome: PairOutcome): void {
  pairStore.setState({ outcome, request: underWay });
  underWay = null;
  const next = waiting;
  waiting = null;
  if (next) askPair(next);
}

function start(): Worker {
  const started = new Worker(new URL("./pair.worker.ts", import.meta.url), { type: "module" });
  started.onmessage = (event: MessageEvent<PairOutcome>) => settle(event.data);
  started.onerror = () => {
    started.terminate();
    worker = null;
    settle(FAILED);
  };
  return started;
}

/** Asks for a pair; the answer comes into the store. */
export function askPair(request: PairRequest): void {
  if (typeof Worker === "undefined") pairStore.setState({ outcome: pairOutcome(request), request });
  else if (underWay) waiting = request;
  else {
    underWay = request;
    worker ??= start();
    worker.postMessage(request);
  }
}
