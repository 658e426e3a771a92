import styles from "./Chart.module.css";
import { type Curve, type Level, type Marker, type Strip, valueAtX } from "./curve";

interface LegendProps {
  curves: readonly Curve[];
  markers: readonly Marker[];
  levels: readonly Level[];
  strips: readonly Strip[];
  hidden: ReadonlySet<string>;
  onSwitch: (id: string) => void;
  /** at the pointer; null if it is outside the plot */
  x: number | null;
  format: (value: number) => string;
}

/** Every curve with a button to show or hide it, and its value under the pointer. */
export function Legend({ curves, markers, levels, strips, hidden, onSwitch, x, format }: LegendProps) {
  return (
    <ul className={styles.legend}>
      {curves.map((curve) => {
        const shown = !hidden.has(curve.id);
        const value = x === null || !shown ? null : valueAtX(curve, x);
        return (
          <li key={curve.id}>
            <button
              type="button"
              aria-pressed={shown}
              className={styles.switch}
              onClick={() => onSwitch(curve.id)}
            >
              <svg width="22" height="10" aria-hidden="true">
                <path
                  d="M1 5H21"
                  stroke={`var(${curve.colour})`}
                  strokeWidth={Math.min(2.4, 1.3 * (curve.width ?? 2))}
                  strokeDasharray={curve.dash}
                />
              </svg>
              {curve.label}
              {value !== null && <b className={styles.reading}>{format(value)}</b>}
            </button>
          </li>
        );
      })}
      {levels.map(({ id, label, colour, dash }) => (
        <li key={id} className={styles.marker}>
          <svg width="22" height="10" aria-hidden="true">
            <path d="M1 5H21" stroke={`var(${colour})`} strokeWidth="1.6" strokeDasharray={dash} />
          </svg>
          {label}
        </li>
      ))}
      {strips.map(({ id, label, colour, open }) => (
        <li key={id} className={styles.marker}>
          <svg width="16" height="10" aria-hidden="true">
            <rect
              x="1"
              y="1.5"
              width="14"
              height="7"
              stroke={`var(${colour})`}
              fill={open ? "none" : `var(${colour})`}
            />
          </svg>
          {label}
        </li>
      ))}
      {markers.map((marker) => (
        <li key={marker.id} className={styles.marker}>
          <svg width="10" height="14" aria-hidden="true">
            <path
              d="M5 0V14"
              stroke={`var(${marker.colour})`}
              strokeWidth="2"
              strokeDasharray={marker.solid || marker.id === "present" ? undefined : "4 3"}
            />
          </svg>
          {marker.label}
        </li>
      ))}
    </ul>
  );
}
