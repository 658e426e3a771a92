import { formatQuantity } from "../units/format";
import type { UnitSystem } from "../units/unitSystem";
import styles from "./Drawing.module.css";
import type { View } from "./view";

const ROUND: Record<UnitSystem, readonly number[]> = {
  metric: [0.0001, 0.0002, 0.0005, 0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20],
  inch: [
    0.000254, 0.00127, 0.00254, 0.0127, 0.0254, 0.0508, 0.127, 0.254, 0.3048, 0.6096, 1.524, 3.048, 6.096,
    15.24,
  ],
};
/** px */
const WANTED = 90;

/** The round length that comes closest to the wanted width. */
export function scaleBarLength(scale: number, system: UnitSystem): number {
  const lengths = ROUND[system];
  return lengths.reduce((best, length) =>
    Math.abs(Math.log((length * scale) / WANTED)) < Math.abs(Math.log((best * scale) / WANTED))
      ? length
      : best,
  );
}

/** The drawing's scale as a bar of a round length in the lower corner. */
export function ScaleBar({ view, system }: { view: View; system: UnitSystem }) {
  const length = scaleBarLength(view.scale, system);
  const width = length * view.scale;
  const [x, y] = [view.width - 14 - width, view.height - 12];
  return (
    <g className={styles.scaleBar}>
      <path d={`M${x} ${y - 5}V${y}H${x + width}V${y - 5}M${x + width / 2} ${y}v-3`} />
      <text x={x + width / 2} y={y - 8} textAnchor="middle">
        {formatQuantity(length, "length", system, 3).text}
      </text>
    </g>
  );
}
