/** The progress of a computation, in a separate store so that nothing else is rendered with it. */
import { createStore, type StoreApi } from "zustand/vanilla";
import { tenTimesASecond } from "./pace";

export interface ProgressState {
  /** whether it has taken long enough to be shown */
  shown: boolean;
  /** 0 … 1; null if unknown */
  done: number | null;
}

export type ProgressStore = StoreApi<ProgressState>;

export interface Progress {
  store: ProgressStore;
  /** If it is shown already, it stays shown when the next computation begins. */
  begin(): void;
  tell(done: number): void;
  end(): void;
}

/** ms; shorter computations show no progress */
const WORTH_SHOWING = 500;

/** Makes the progress of a computation that has not begun. */
export function newProgress(): Progress {
  const store = createStore<ProgressState>(() => ({ shown: false, done: null }));
  let timer: ReturnType<typeof setTimeout> | undefined;
  let done: number | null = null;
  let mayTell = tenTimesASecond();
  return {
    store,
    begin() {
      clearTimeout(timer);
      done = null;
      mayTell = tenTimesASecond();
      if (store.getState().shown) store.setState({ done });
      else timer = setTimeout(() => store.setState({ shown: true, done }), WORTH_SHOWING);
    },
    tell(now) {
      done = now;
      if (store.getState().shown && mayTell()) store.setState({ done });
    },
    end() {
      clearTimeout(timer);
      if (store.getState().shown) store.setState({ shown: false, done: null });
    },
  };
}
