import type { Primary } from "../calc/design-parts";
import { turnSections } from "./coilShape";
import styles from "./Drawing.module.css";
import { type View, xOf, yOf } from "./view";

/** Sections of the primary's tube, used turns filled and unused ones open, and the strike rail. */
export function PrimaryShape({ view, primary }: { view: View; primary: Primary }) {
  const tube = Math.max(1.2, (primary.tubeDiameter / 2) * view.scale);
  const rail = primary.strikeRail;
  return (
    <g>
      {turnSections(primary).map(({ turn, radius, height, active }) => (
        <circle
          key={turn}
          className={active ? styles.tube : styles.unusedTube}
          cx={xOf(view, radius)}
          cy={yOf(view, height)}
          r={tube}
        />
      ))}
      {rail &&
        [-1, 1].map((side) => (
          <circle
            key={side}
            className={styles.rail}
            cx={xOf(view, side * rail.radius)}
            cy={yOf(view, rail.height)}
            r={Math.max(1.5, (rail.tubeDiameter / 2) * view.scale)}
          />
        ))}
    </g>
  );
}
