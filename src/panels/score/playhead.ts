/** The preview's position in the score: the player sets it; rolls and time lines show it and can seek. */
import { createStore } from "zustand/vanilla";

interface Playhead {
  /** s */
  position: number;
  /** null if there is no player */
  seek: ((time: number) => void) | null;
}

export const playhead = createStore<Playhead>(() => ({ position: 0, seek: null }));
