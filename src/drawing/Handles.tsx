import { heightAtTurn, radiusAtTurn } from "../calc/coil/primaryGeometry";
import type { Primary, TopLoadElement } from "../calc/design-parts";
import { withValueAt } from "../design/changeAt";
import { TAP_STEP } from "../fields/primaryFields";
import { formatQuantity } from "../units/format";
import type { UnitSystem } from "../units/unitSystem";
import { lowestTap, moveTap } from "../workbench/session/moveTap";
import { workbench } from "../workbench/session/session";
import { elementHalves, tapAtPoint } from "./coilShape";
import styles from "./Drawing.module.css";
import { Handle } from "./Handle";
import { heightOf, radiusOf, type View, xOf, yOf } from "./view";

/** Of a metre: a tenth of a millimetre, finer than any drag. */
const DECIMALS = 4;

function set(path: string): (value: number) => void {
  return (value) => workbench.change((design) => withValueAt(design, path, Number(value.toFixed(DECIMALS))));
}

interface TapHandleProps {
  view: View;
  /** as drawn */
  primary: Primary;
  /** as in the design */
  tap: number;
  system: UnitSystem;
  tuned: boolean;
}

const FLAG = 30;
/** From this many turns the digits do not fit on the flag. */
const MOST_ON_FLAG = 1e4;

function flagText(tap: number): string {
  return tap < MOST_ON_FLAG ? tap.toFixed(2) : "off scale";
}

/** The tap as a flag on the primary, dragged along its slope. */
export function TapHandle({ view, primary, tap, system, tuned }: TapHandleProps) {
  const { turns } = primary;
  const at = Math.min(primary.tap, turns + 1);
  const text = formatQuantity(tap, "turns", system).text;
  return (
    <Handle
      x={xOf(view, radiusAtTurn(primary, at))}
      y={yOf(view, heightAtTurn(primary, at))}
      label="Tap on the primary"
      value={tap}
      minimum={lowestTap(turns)}
      maximum={turns}
      valueText={`${text}${tuned ? ", tuned" : ""}`}
      step="move tap"
      keyStep={TAP_STEP}
      valueAt={(x, y) => tapAtPoint(primary, radiusOf(view, x), heightOf(view, y))}
      onChange={moveTap}
    >
      <path className={styles.tapStem} d={`M0 4V${FLAG}`} />
      <path
        className={styles.tapFlag}
        d={`M0 ${FLAG}h${tuned ? 62 : 48}l6 -10l-6 -10h-${tuned ? 62 : 48}z`}
      />
      {tuned && <path className={styles.tapTick} d={`M7 ${FLAG - 10}l3 3.5 5.5 -7`} />}
      <text className={styles.tapText} x={tuned ? 20 : 7} y={FLAG - 5}>
        {flagText(tap)}
      </text>
      <circle className={styles.tapPoint} r={4.5} />
    </Handle>
  );
}

interface ElementHandlesProps {
  view: View;
  element: TopLoadElement;
  index: number;
  system: UnitSystem;
}

/** Fraction of the outer diameter: a thicker tube would close the hole. */
const THICKEST_TUBE = 1 / 2.02;

/** The handle of a toroid's tube, on top of its section. */
function TubeHandle({ view, element, index, system }: ElementHandlesProps) {
  if (element.shape !== "toroid") return null;
  const { outerDiameter, tubeDiameter, centreHeight } = element;
  return (
    <Handle
      x={xOf(view, -(outerDiameter - tubeDiameter) / 2)}
      y={yOf(view, centreHeight + tubeDiameter / 2)}
      label={`Tube of toroid ${index + 1}`}
      value={tubeDiameter}
      minimum={Math.min(0.005, tubeDiameter)}
      maximum={outerDiameter * THICKEST_TUBE}
      valueText={formatQuantity(tubeDiameter, "length", system).text}
      step={`change the tube of toroid ${index + 1}`}
      keyStep={0.002}
      valueAt={(_, y) => 2 * (heightOf(view, y) - centreHeight)}
      onChange={set(`topLoad.elements.${index}.tubeDiameter`)}
    >
      <path className={styles.grip} d="M-6 -3h12M-6 3h12" />
    </Handle>
  );
}

/** Handles for the width, the height and the tube of a top load's element, each at its edge. */
export function ElementHandles({ view, element, index, system }: ElementHandlesProps) {
  const { halfHeight, halfWidth } = elementHalves(element);
  const path = `topLoad.elements.${index}`;
  const toroid = element.shape === "toroid";
  const width = toroid ? "outerDiameter" : "diameter";
  const name = `${toroid ? "toroid" : "sphere"} ${index + 1}`;
  const text = (value: number): string => formatQuantity(value, "length", system).text;
  const smallest = toroid ? element.tubeDiameter / THICKEST_TUBE : 0.01;
  return (
    <>
      <Handle
        x={xOf(view, halfWidth)}
        y={yOf(view, element.centreHeight)}
        label={`Diameter of ${name}`}
        value={2 * halfWidth}
        minimum={smallest}
        maximum={4}
        valueText={text(2 * halfWidth)}
        step={`widen ${name}`}
        keyStep={0.005}
        valueAt={(x) => 2 * radiusOf(view, x)}
        onChange={set(`${path}.${width}`)}
      >
        <path className={styles.grip} d="M-3 -6v12M3 -6v12" />
      </Handle>
      <Handle
        x={view.axis}
        y={yOf(view, element.centreHeight + halfHeight)}
        label={`Height of ${name}`}
        value={element.centreHeight}
        minimum={halfHeight + 0.005}
        maximum={10}
        valueText={text(element.centreHeight)}
        step={`raise ${name}`}
        keyStep={0.005}
        valueAt={(_, y) => heightOf(view, y) - halfHeight}
        onChange={set(`${path}.centreHeight`)}
      >
        <path className={styles.grip} d="M-6 -3h12M-6 3h12" />
      </Handle>
      <TubeHandle view={view} element={element} index={index} system={system} />
    </>
  );
}
