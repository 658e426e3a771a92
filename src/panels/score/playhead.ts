/** Where the preview is in the score: the player tells it, rolls and lines show it and ask for another place. */
import { createStore } from "zustand/vanilla";

interface Playhead {
  /** s */
  position: number;
  /** null while no player is there */
  seek: ((time: number) => void) | null;
}

export const playhead = createStore<Playhead>(() => ({ position: 0, seek: null }));
