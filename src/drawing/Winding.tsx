import type { Secondary } from "../calc/design-parts";
import { windingRadius } from "./coilShape";
import styles from "./Drawing.module.css";
import { type View, xOf, yOf } from "./view";

const LINES = 4;
const MOST_LINES = 400;
const FORMER_REACH = 0.03;

/** The winding in elevation, with fine lines for its turns, and the ends of the former. */
export function Winding({ view, secondary }: { view: View; secondary: Secondary }) {
  const radius = windingRadius(secondary);
  const left = xOf(view, -radius);
  const width = 2 * radius * view.scale;
  const top = yOf(view, secondary.baseHeight + secondary.windingLength);
  const height = secondary.windingLength * view.scale;
  const former = xOf(view, -secondary.formerDiameter / 2);
  const reach = Math.min(FORMER_REACH, secondary.baseHeight) * view.scale;
  const count = Math.min(MOST_LINES, Math.max(1, Math.floor(height / LINES)));
  const lines = Array.from({ length: count }, (_, index) => {
    const y = top + ((index + 0.5) * height) / count;
    return `M${left} ${y + 0.6}L${left + width} ${y - 0.6}`;
  }).join("");
  return (
    <g>
      <rect
        className={styles.former}
        x={former}
        y={top - reach}
        width={secondary.formerDiameter * view.scale}
        height={height + 2 * reach}
      />
      <rect className={styles.winding} x={left} y={top} width={width} height={height} />
      <path className={styles.turns} d={lines} />
    </g>
  );
}
