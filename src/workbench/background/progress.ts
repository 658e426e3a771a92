/** How far a computation is, in a store of its own, so that nothing else on the screen is drawn again with it. */
import { createStore, type StoreApi } from "zustand/vanilla";
import { tenTimesASecond } from "./pace";

export interface ProgressState {
  /** whether it has taken so long that it is worth showing */
  shown: boolean;
  /** 0 … 1; null where it is not known */
  done: number | null;
}

export type ProgressStore = StoreApi<ProgressState>;

export interface Progress {
  store: ProgressStore;
  /** One that is shown already stays in sight when the next computation begins. */
  begin(): void;
  tell(done: number): void;
  end(): void;
}

/** ms; what is done by then needs no word */
const WORTH_SHOWING = 500;

/** Makes the progress of something that has not begun. */
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
