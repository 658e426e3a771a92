import type { Room } from "../calc/design-parts";
import styles from "./Drawing.module.css";
import { type View, xOf, yOf } from "./view";

const SPACING = 9;
const DEPTH = 8;

function places(length: number): number[] {
  return Array.from({ length: Math.ceil(length / SPACING) + 1 }, (_, index) => index * SPACING);
}

/** Ceiling and wall with their hatching, where they are in view. */
export function RoomShape({ view, room }: { view: View; room: Room }) {
  const ceiling = room.ceilingHeight === null ? -1 : yOf(view, room.ceilingHeight);
  const wall = room.wallDistance === null ? view.width + 1 : xOf(view, room.wallDistance);
  const wallTop = Math.max(0, ceiling);
  return (
    <g className={styles.ground}>
      {ceiling >= 0 && (
        <>
          <path
            d={places(view.width)
              .map((x) => `M${x} ${ceiling}l${DEPTH} ${-DEPTH}`)
              .join("")}
            className={styles.hatch}
          />
          <line x1={0} x2={view.width} y1={ceiling} y2={ceiling} />
        </>
      )}
      {wall <= view.width && (
        <>
          <path
            d={places(view.ground - wallTop)
              .map((below) => view.ground - below)
              .map((y) => `M${wall} ${y}l${DEPTH} ${-DEPTH}`)
              .join("")}
            className={styles.hatch}
          />
          <line x1={wall} x2={wall} y1={wallTop} y2={view.ground} />
        </>
      )}
    </g>
  );
}
