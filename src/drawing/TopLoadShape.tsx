import type { TopLoad, TopLoadElement } from "../calc/design-parts";
import { elementHalves, widestElement } from "./coilShape";
import styles from "./Drawing.module.css";
import { type View, xOf, yOf } from "./view";

function ElementShape({ view, element }: { view: View; element: TopLoadElement }) {
  const { halfHeight, halfWidth } = elementHalves(element);
  const y = yOf(view, element.centreHeight);
  const tube = halfHeight * view.scale;
  if (element.shape === "sphere") return <circle className={styles.topLoad} cx={view.axis} cy={y} r={tube} />;
  const centre = (halfWidth - halfHeight) * view.scale;
  return (
    <g>
      <rect
        className={styles.topLoad}
        x={xOf(view, -halfWidth)}
        y={y - tube}
        width={2 * halfWidth * view.scale}
        height={2 * tube}
        rx={tube}
      />
      {[-centre, centre].map((offset, side) => (
        <g key={side}>
          <circle className={styles.cut} cx={view.axis + offset} cy={y} r={tube} />
          <path
            className={styles.centreMark}
            d={`M${view.axis + offset - 4} ${y}h8M${view.axis + offset} ${y - 4}v8`}
          />
        </g>
      ))}
    </g>
  );
}

/** The elements of the top load and its breakout point. */
export function TopLoadShape({ view, topLoad }: { view: View; topLoad: TopLoad }) {
  const { elements, breakoutPoint } = topLoad;
  const carrier = elements[widestElement(elements)];
  return (
    <g>
      {elements.map((element, index) => (
        <ElementShape key={index} view={view} element={element} />
      ))}
      {carrier && breakoutPoint && (
        <line
          className={styles.point}
          x1={xOf(view, elementHalves(carrier).halfWidth)}
          x2={xOf(view, elementHalves(carrier).halfWidth + breakoutPoint.length)}
          y1={yOf(view, carrier.centreHeight)}
          y2={yOf(view, carrier.centreHeight)}
        />
      )}
    </g>
  );
}
