import { type CoilShape, coilExtent } from "../../../drawing/coilShape";
import { drawnShape } from "../../../drawing/drawnShape";
import { Ground } from "../../../drawing/Ground";
import { NotToScale } from "../../../drawing/NotToScale";
import { PrimaryShape } from "../../../drawing/PrimaryShape";
import { ScaleBar } from "../../../drawing/ScaleBar";
import { TopLoadShape } from "../../../drawing/TopLoadShape";
import { fitView, type View } from "../../../drawing/view";
import { Winding } from "../../../drawing/Winding";
import type { UnitSystem } from "../../../units/unitSystem";
import styles from "./Pair.module.css";

const WIDTH = 480;
const HEIGHT = 260;
const MARGINS = { side: 12, top: 12, bottom: 40 };
/** m; coils farther apart are drawn at this spacing */
const MAX_DRAWN_SPACING = 100;

/** The view of both coils at their spacing. */
export function pairView(left: CoilShape, right: CoilShape, spacing: number): View {
  const [a, b] = [coilExtent(left), coilExtent(right)];
  const halfWidth = spacing / 2 + Math.max(a.halfWidth, b.halfWidth);
  return fitView({ halfWidth, height: Math.max(a.height, b.height) }, WIDTH, HEIGHT, MARGINS);
}

function Coil({ view, shape }: { view: View; shape: CoilShape }) {
  return (
    <g>
      <Winding view={view} secondary={shape.secondary} />
      <TopLoadShape view={view} topLoad={shape.topLoad} />
      <PrimaryShape view={view} primary={shape.primary} />
    </g>
  );
}

interface PairDrawingProps {
  left: CoilShape;
  right: CoilShape;
  /** m */
  spacing: number;
  system: UnitSystem;
}

/** Both coils in cross-section, to one scale, at their spacing. */
export function PairDrawing({ left, right, spacing, system }: PairDrawingProps) {
  const [a, b] = [drawnShape(left), drawnShape(right)];
  const drawnSpacing = Math.min(spacing, MAX_DRAWN_SPACING);
  const view = pairView(a.shape, b.shape, drawnSpacing);
  const half = (drawnSpacing / 2) * view.scale;
  const spacingNames = drawnSpacing === spacing ? [] : ["spacing"];
  const names = new Set([...a.notToScale, ...b.notToScale, ...spacingNames]);
  return (
    <>
      <svg
        className={styles.drawing}
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label="Both coils side by side, to one scale"
      >
        <Ground view={view} />
        <Coil view={{ ...view, axis: view.axis - half }} shape={a.shape} />
        <Coil view={{ ...view, axis: view.axis + half }} shape={b.shape} />
        <ScaleBar view={view} system={system} />
      </svg>
      <NotToScale names={[...names]} />
    </>
  );
}
