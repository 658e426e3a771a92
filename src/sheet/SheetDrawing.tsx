import { CoilDrawing } from "../drawing/CoilDrawing";
import { coilExtent } from "../drawing/coilShape";
import { drawnShape } from "../drawing/drawnShape";
import { NotToScale } from "../drawing/NotToScale";
import { ScaleBar } from "../drawing/ScaleBar";
import { fitView } from "../drawing/view";
import { useDesign, useUnitSystem } from "../workbench/session/hooks";
import styles from "./BuildSheet.module.css";

/** Units of the drawing; the sheet scales them to millimetres of paper. */
const WIDTH = 460;
const HEIGHT = 520;
const MARGINS = { side: 74, top: 50, bottom: 62 };

/** The drawing with its dimensions, for paper. */
export function SheetDrawing() {
  const shape = useDesign(({ secondary, topLoad, primary }) => ({ secondary, topLoad, primary }));
  const system = useUnitSystem();
  const drawn = drawnShape(shape);
  const view = fitView(coilExtent(drawn.shape), WIDTH, HEIGHT, MARGINS);
  return (
    <div className={styles.drawing}>
      <CoilDrawing
        view={view}
        shape={shape}
        drawn={drawn.shape}
        system={system}
        profile={null}
        label="Cross-section with dimensions, to scale"
      >
        <ScaleBar view={view} system={system} />
      </CoilDrawing>
      <NotToScale names={drawn.notToScale} />
    </div>
  );
}
