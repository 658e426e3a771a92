import styles from "./Drawing.module.css";
import type { View } from "./view";

const SPACING = 9;
const DEPTH = 8;

/** The ground plane with earth hatching below it. */
export function Ground({ view }: { view: View }) {
  const strokes = Array.from({ length: Math.ceil(view.width / SPACING) + 1 }, (_, index) => index * SPACING);
  const path = strokes.map((x) => `M${x} ${view.ground}l${-DEPTH} ${DEPTH}`).join("");
  return (
    <g className={styles.ground}>
      <path d={path} className={styles.hatch} />
      <line x1={0} x2={view.width} y1={view.ground} y2={view.ground} />
    </g>
  );
}
