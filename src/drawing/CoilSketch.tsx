import { heightAtTurn, radiusAtTurn } from "../calc/coil/primaryGeometry";
import styles from "./CoilSketch.module.css";
import { type CoilShape, coilExtent, elementHalves, windingRadius } from "./coilShape";
import { type View, xOf, yOf } from "./view";

interface CoilSketchProps {
  /** one coil, or several side by side at one scale */
  shapes: readonly CoilShape[];
  /** px */
  width: number;
  height: number;
}

const MARGIN = 3;
/** More elements and coils than these could not be distinguished at this size. */
const MOST_ELEMENTS = 12;
const MOST_SHAPES = 3;

function Primary({ view, primary }: { view: View; primary: CoilShape["primary"] }) {
  const [from, to] = [0, primary.turns].map((turn) => ({
    radius: radiusAtTurn(primary, turn),
    y: yOf(view, heightAtTurn(primary, turn)),
  }));
  const line = (side: number) =>
    `M${xOf(view, side * from.radius)} ${from.y}L${xOf(view, side * to.radius)} ${to.y}`;
  const width = Math.min(6, Math.max(1.5, primary.tubeDiameter * view.scale));
  return <path className={styles.primary} strokeWidth={width} d={line(-1) + line(1)} />;
}

function Coil({ view, shape }: { view: View; shape: CoilShape }) {
  const { secondary, topLoad, primary } = shape;
  const radius = windingRadius(secondary);
  return (
    <g>
      <rect
        className={styles.winding}
        x={xOf(view, -radius)}
        y={yOf(view, secondary.baseHeight + secondary.windingLength)}
        width={2 * radius * view.scale}
        height={secondary.windingLength * view.scale}
      />
      {topLoad.elements.slice(0, MOST_ELEMENTS).map((element, index) => {
        const { halfWidth, halfHeight } = elementHalves(element);
        return (
          <rect
            key={index}
            className={styles.topLoad}
            x={xOf(view, -halfWidth)}
            y={yOf(view, element.centreHeight + halfHeight)}
            width={2 * halfWidth * view.scale}
            height={2 * halfHeight * view.scale}
            rx={halfHeight * view.scale}
          />
        );
      })}
      <Primary view={view} primary={primary} />
    </g>
  );
}

/** Thumbnails of coils to scale; only the ground if a size cannot be drawn. */
export function CoilSketch({ shapes, width, height }: CoilSketchProps) {
  const drawn = shapes.slice(0, MOST_SHAPES);
  const extents = drawn.map(coilExtent);
  const extent = {
    halfWidth: Math.max(...extents.map(({ halfWidth }) => halfWidth)),
    height: Math.max(...extents.map((each) => each.height)),
  };
  const column = width / Math.max(1, drawn.length);
  const scale = Math.min(
    (column - 2 * MARGIN) / (2 * extent.halfWidth),
    (height - 2 * MARGIN) / extent.height,
  );
  const drawable = Number.isFinite(scale) && scale > 0;
  const ground = height - MARGIN;
  const viewOf = (index: number): View => ({ width, height, scale, ground, axis: (index + 0.5) * column });
  return (
    <svg
      className={styles.sketch}
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
    >
      <path className={styles.ground} d={`M0 ${ground}H${width}`} />
      {drawable && drawn.map((shape, index) => <Coil key={index} shape={shape} view={viewOf(index)} />)}
    </svg>
  );
}
