import { useStore } from "zustand";
import { playhead } from "./playhead";
import styles from "./Score.module.css";

/** A line over roll and time lines where the preview is. */
export function PlayheadLine({ duration }: { duration: number }) {
  const position = useStore(playhead, (state) => state.position);
  return (
    <span
      className={styles.playhead}
      style={{ left: `${duration > 0 ? (100 * position) / duration : 0}%` }}
      data-testid="playhead"
      aria-hidden="true"
    />
  );
}
