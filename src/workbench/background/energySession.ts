/** Keeps the sweep of bursts in step with the open design while it is shown or the tuning aim needs it. */

import { createStore, type StoreApi } from "zustand/vanilla";
import type { EnergySweep } from "../../calc/circuit/energySweep";
import type { Design } from "../../design/design";
import { openDesignOf } from "../session/showEdits";
import type { WorkbenchState } from "../session/workbenchState";
import { burstKey } from "./burstKey";
import type { EnergyRequest } from "./energySweepJob";
import type { ProgressStore } from "./progress";
import type { WorkerLike } from "./runner";
import { newTask } from "./task";
import { lastEditOf, reportTo } from "./trouble";

export interface EnergyState {
  /** null before the first, and if the coil has no solution */
  sweep: EnergySweep | null;
  /** whether there has been a sweep of the open design, perhaps before its last changes */
  swept: boolean;
  /** whether the design has changed since */
  stale: boolean;
  /** from a change until its sweep is done */
  sweeping: boolean;
}

export interface EnergySweeps {
  store: StoreApi<EnergyState>;
  progress: ProgressStore;
  /** Sweeps all on-times until the returned function is called. */
  watch(): () => void;
  /** Cancels the sweep in progress; the old one stays. */
  cancel(): void;
  /** Repeats a cancelled sweep. */
  again(): void;
  close(): void;
}

/** ms without a change before a sweep begins */
const PAUSE = 300;

const NOTHING: EnergyState = { sweep: null, swept: false, stale: false, sweeping: false };

/** Follows the open design of a session and sets the session's tap with most energy. */
export function newEnergySweeps(
  board: StoreApi<WorkbenchState>,
  startWorker: () => WorkerLike,
): EnergySweeps {
  const store = createStore<EnergyState>(() => NOTHING);
  let watchers = 0;
  /** the last request, whether waiting, in progress, done or cancelled */
  let asked: { key: string; onTimes: "all" | "own" } | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const openDesign = (): Design => openDesignOf(board.getState().history.present);
  const report = reportTo(board);
  const settle = (sweep: EnergySweep | null) => {
    store.setState({ sweep, swept: true, stale: false, sweeping: false });
    if (asked) board.setState({ mostEnergy: { key: asked.key, tap: sweep?.mostEnergyTap ?? null } });
  };
  const task = newTask<EnergyRequest, EnergySweep | null>({
    what: "the sweep of bursts",
    startWorker,
    grace: 0,
    report: (what, trouble) => report(what, trouble && { ...trouble, again }),
    lastEdit: () => lastEditOf(board.getState()),
    listener: { result: settle, trouble: () => store.setState({ sweeping: false }) },
  });
  const cancel = () => {
    clearTimeout(timer);
    task.cancel();
    store.setState({ sweeping: false });
  };
  const start = () => {
    if (asked) task.ask({ design: openDesign(), onTimes: asked.onTimes });
  };
  const again = () => {
    cancel();
    if (!asked) return;
    store.setState({ sweeping: true });
    task.insist({ design: openDesign(), onTimes: asked.onTimes });
  };
  const wanted = ({ tuningAim }: Design) => {
    if (watchers > 0) return "all";
    return tuningAim.kind === "most energy" ? "own" : null;
  };
  /** An unfinished sweep is requested again when it is next needed. */
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
    store.setState(({ swept }) => ({ stale: swept, sweeping: true }));
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
    progress: task.progress,
    watch() {
      watchers++;
      follow();
      return () => {
        watchers--;
        if (!store.getState().sweeping) forgetUnfinished();
        follow();
      };
    },
    cancel,
    again,
    close() {
      cancel();
      task.close();
      endFollowing();
    },
  };
}
