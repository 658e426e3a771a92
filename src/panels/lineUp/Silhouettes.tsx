import type { LineUpCandidate } from "../../design/show";
import { elementHalves } from "../../drawing/coilShape";
import { drawnTopLoad } from "../../drawing/drawnShape";
import styles from "./LineUp.module.css";

const WIDTH = 92;
const HEIGHT = 56;
const MARGIN = 4;

/** One top load to scale, with the same scale for all candidates. */
export function Silhouette({ candidate, widest }: { candidate: LineUpCandidate; widest: number }) {
  const { elements } = drawnTopLoad(candidate.topLoad);
  const scale = (WIDTH - 2 * MARGIN) / widest;
  const middle =
    elements.reduce((sum, element) => sum + element.centreHeight, 0) / Math.max(1, elements.length);
  return (
    <svg className={styles.silhouette} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      {elements.map((element, index) => {
        const { halfWidth, halfHeight } = elementHalves(element);
        const y = HEIGHT / 2 - (element.centreHeight - middle) * scale;
        return (
          <rect
            key={index}
            x={WIDTH / 2 - halfWidth * scale}
            y={y - halfHeight * scale}
            width={2 * halfWidth * scale}
            height={2 * halfHeight * scale}
            rx={halfHeight * scale}
          />
        );
      })}
    </svg>
  );
}

/** m, the widest of all candidates. */
export function widestOf(candidates: readonly LineUpCandidate[]): number {
  const widths = candidates.flatMap(({ topLoad }) =>
    drawnTopLoad(topLoad).elements.map((element) => 2 * elementHalves(element).halfWidth),
  );
  return Math.max(0.1, ...widths);
}
