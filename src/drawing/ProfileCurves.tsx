import type { ProfilePoint } from "../calc/coil/modeProfile";
import styles from "./Drawing.module.css";
import { type View, yOf } from "./view";

interface ProfileCurvesProps {
  view: View;
  profile: readonly ProfilePoint[];
  /** px, at the winding's outside */
  from: number;
  /** px for the value 1 */
  width: number;
}

/** Voltage and current of the fundamental along the winding, each with its maximum at full width. */
export function ProfileCurves({ view, profile, from, width }: ProfileCurvesProps) {
  const curve = (value: (point: ProfilePoint) => number): string =>
    profile
      .map((point, index) => `${index ? "L" : "M"}${from + value(point) * width} ${yOf(view, point.height)}`)
      .join("");
  const top = yOf(view, profile[profile.length - 1].height);
  const base = yOf(view, profile[0].height);
  return (
    <g>
      <path className={styles.profileAxis} d={`M${from} ${base}V${top}`} />
      <path className={styles.voltage} d={curve((point) => point.voltage)} />
      <path className={styles.current} d={curve((point) => point.current)} />
      <text className={styles.voltageName} x={from + width + 5} y={top + 12}>
        V
      </text>
      <text className={styles.currentName} x={from + width + 5} y={base - 4}>
        I
      </text>
    </g>
  );
}
