import styles from "./TapRuler.module.css";

interface TapRulerProps {
  turns: number;
  suggested: number | null;
  band: { low: number; high: number } | null;
}

/** A scale with more marks than this cannot be read. */
const MOST_MARKS = 400;

const percent = (part: number, whole: number) => `${(100 * part) / whole}%`;

/** The scale behind the tap's slider: a mark at every turn and quarter, and where the suggested tap lies. */
export function TapRuler({ turns, suggested, band }: TapRulerProps) {
  const quarters = Array.from(
    { length: Math.min(MOST_MARKS, Math.floor(turns * 4)) + 1 },
    (_, index) => index / 4,
  );
  return (
    <div className={styles.ruler} aria-hidden="true">
      {band && (
        <span
          className={styles.band}
          style={{ left: percent(band.low, turns), width: percent(band.high - band.low, turns) }}
        />
      )}
      {quarters.map((turn) => (
        <span
          key={turn}
          className={Number.isInteger(turn) ? styles.turn : styles.quarter}
          style={{ left: percent(turn, turns) }}
        >
          {Number.isInteger(turn) && <span className={styles.number}>{turn}</span>}
        </span>
      ))}
      {suggested !== null && suggested <= turns && (
        <span className={styles.suggested} style={{ left: percent(suggested, turns) }} />
      )}
    </div>
  );
}
