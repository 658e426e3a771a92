import { rulerMarks } from "./rulerMarks";
import styles from "./TapRuler.module.css";

interface TapRulerProps {
  turns: number;
  suggested: number | null;
  band: { low: number; high: number } | null;
}

const percent = (part: number, whole: number) => `${(100 * part) / whole}%`;

/** The scale behind the tap's slider: marks at every turn and quarter turn, and the suggested tap. */
export function TapRuler({ turns, suggested, band }: TapRulerProps) {
  return (
    <div className={styles.ruler} aria-hidden="true">
      {band && (
        <span
          className={styles.band}
          style={{ left: percent(band.low, turns), width: percent(band.high - band.low, turns) }}
        />
      )}
      {rulerMarks(turns).map(({ turn, text }) => (
        <span
          key={turn}
          className={text === null ? styles.quarter : styles.turn}
          style={{ left: percent(turn, turns) }}
        >
          {text !== null && <span className={styles.number}>{text}</span>}
        </span>
      ))}
      {suggested !== null && suggested <= turns && (
        <span className={styles.suggested} style={{ left: percent(suggested, turns) }} />
      )}
    </div>
  );
}
