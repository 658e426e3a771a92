/** Keeps a sweep of bursts in step with the open design, while somebody looks at it or the tuning aim needs it. */
import { createStore, type StoreApi } from "zustand/vanilla";
import type { Design } from "../design/design";
import type { EnergySweep } from "../evaluation/energySweep";
import { burstKey, type EnergyReply, type EnergyRequest, sweepBursts } from "./energySweeping";
import { openDesignOf } from "./showEdits";
import type { WorkbenchState } from "./workbenchState";
import type { WorkerLike } from "./workerEvaluator";

export interface EnergyState {
  /** null before the first, and where the coil has no solution */
  sweep: EnergySweep | null;
  /** whether there has been a sweep of the open design, as it is or as it was */
  swept: boolean;
  /** whether the design has changed since */
  stale: boolean;
  /** 0 … 1 from the change on until the sweep is there */
  progress: number | null;
  /** why there is no sweep; empty where all is well */
  message: string;
}

export interface EnergySweeps {
  store: StoreApi<EnergyState>;
  /** Has all on-times swept until what it returns is called. */
  watch(): () => void;
  /** Gives up what is under way; the old sweep stays. */
  cancel(): void;
  /** Sweeps what was given up. */
  again(): void;
  close(): void;
}

/** ms without a change before a sweep begins */
const PAUSE = 300;

const NOTHING: EnergyState = { sweep: null, swept: false, stale: false, progress: null, message: "" };
const DIED = "The sweep of bursts stopped unexpectedly; compute it again.";

/** A worker that is kept from sweep to sweep, so that it remembers the coil, and is ended to give one up. */
function newSweeper(startWorker: (() => WorkerLike) | null, settle: (reply: EnergyReply) => void) {
  let worker: WorkerLike | null = null;
  let running = false;
  const end = () => {
    worker?.terminate();
    worker = null;
    running = false;
  };
  const start = (starting: () => WorkerLike): WorkerLike => {
    const started = starting();
    started.addEventListener("message", (event) => {
      if (worker !== started) return;
      const { data } = event as MessageEvent<EnergyReply>;
      if (!("progress" in data)) running = false;
      settle(data);
    });
    started.addEventListener("error", () => {
      if (worker !== started) return;
      end();
      settle({ failure: DIED });
    });
    return started;
  };
  const run = (request: EnergyRequest) => {
    if (startWorker === null) {
      sweepBursts(request, settle);
      return;
    }
    worker ??= start(startWorker);
    running = true;
    worker.postMessage(request);
  };
  return {
    run,
    giveUp: () => {
      if (running) end();
    },
    end,
  };
}

/**
 * Follows the open design of a session and tells it the tap with most energy.
 * @param startWorker null where there are no workers: bursts are then swept in place
 */
export function newEnergySweeps(
  board: StoreApi<WorkbenchState>,
  startWorker: (() => WorkerLike) | null,
): EnergySweeps {
  const store = createStore<EnergyState>(() => NOTHING);
  let watchers = 0;
  /** what was asked last, be it waiting, under way, there or given up */
  let asked: { key: string; onTimes: "all" | "own" } | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const openDesign = (): Design => openDesignOf(board.getState().history.present);
  const settle = (reply: EnergyReply) => {
    if ("progress" in reply) store.setState({ progress: reply.progress });
    else if ("failure" in reply) store.setState({ progress: null, message: reply.failure });
    else {
      store.setState({ sweep: reply.sweep, swept: true, stale: false, progress: null, message: "" });
      if (asked) board.setState({ mostEnergy: { key: asked.key, tap: reply.sweep?.mostEnergyTap ?? null } });
    }
  };
  const sweeper = newSweeper(startWorker, settle);
  const cancel = () => {
    clearTimeout(timer);
    sweeper.giveUp();
    store.setState({ progress: null });
  };
  const start = () => {
    if (asked) sweeper.run({ design: openDesign(), onTimes: asked.onTimes });
  };
  const wanted = ({ tuningAim }: Design) => {
    if (watchers > 0) return "all";
    return tuningAim.kind === "most energy" ? "own" : null;
  };
  /** A sweep that is not there is asked for again by the next who needs it. */
  const forgetUnfinished = () => {
    const { swept, stale } = store.getState();
    if (!swept || stale) asked = null;
  };
  const follow = () => {
    const design = openDesign();
    const onTimes = wanted(design);
    if (onTimes === null) {
      forgetUnfinished();
      cancel();
      return;
    }
    const key = burstKey(design);
    if (asked?.key === key && (asked.onTimes === "all" || asked.onTimes === onTimes)) return;
    cancel();
    asked = { key, onTimes };
    store.setState(({ swept }) => ({ stale: swept, progress: 0, message: "" }));
    timer = setTimeout(start, PAUSE);
  };
  const endFollowing = board.subscribe((state, before) => {
    const [now, then] = [state.history.present, before.history.present];
    if (openDesignOf(now) === openDesignOf(then)) return;
    if (now.open !== then.open) {
      cancel();
      asked = null;
      store.setState(NOTHING);
    }
    follow();
  });
  follow();

  return {
    store,
    watch() {
      watchers++;
      follow();
      return () => {
        watchers--;
        if (store.getState().progress === null) forgetUnfinished();
        follow();
      };
    },
    cancel,
    again() {
      cancel();
      store.setState({ progress: 0, message: "" });
      start();
    },
    close() {
      cancel();
      sweeper.end();
      endFollowing();
    },
  };
}
