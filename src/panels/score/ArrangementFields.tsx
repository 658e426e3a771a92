import type { Arrangement } from "../../design/arrangement";
import { workbench } from "../../workbench/session";
import styles from "./Score.module.css";

interface Entry {
  key: keyof Arrangement;
  label: string;
  /** what is shown for one unit of what is kept */
  scale: number;
  least: number;
  most: number;
  step: number;
}

const ENTRIES: Entry[] = [
  { key: "onTime", label: "Full on-time, µs", scale: 1e6, least: 0, most: 1000, step: 1 },
  { key: "kneeRate", label: "Knee, Hz", scale: 1, least: 20, most: 5000, step: 0.01 },
  { key: "pitchExponent", label: "Fall above the knee", scale: 1, least: 0, most: 3, step: 0.1 },
  { key: "voices", label: "Voices on a coil", scale: 1, least: 1, most: 16, step: 1 },
];

function change({ key, scale, least, most, step }: Entry, shown: number): void {
  if (!Number.isFinite(shown)) return;
  const bounded = Math.min(most, Math.max(least, step === 1 ? Math.round(shown) : shown));
  workbench.editShow("Change arrangement", (show) => ({
    ...show,
    arrangement: { ...show.arrangement, [key]: bounded / scale },
  }));
}

/** How notes become on-times; the interrupter's limits stand above it. */
export function ArrangementFields({ arrangement }: { arrangement: Arrangement }) {
  return (
    <div className={styles.player}>
      {ENTRIES.map((entry) => (
        <label key={entry.key} className={styles.entry}>
          {entry.label}
          <input
            type="number"
            min={entry.least}
            max={entry.most}
            step={entry.step}
            value={Number((arrangement[entry.key] * entry.scale).toPrecision(6))}
            onChange={(event) => change(entry, event.target.valueAsNumber)}
          />
        </label>
      ))}
    </div>
  );
}
