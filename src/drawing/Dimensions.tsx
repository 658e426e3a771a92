import { radiusAtTurn } from "../calc/coil/primaryGeometry";
import { formatQuantity } from "../units/format";
import type { UnitSystem } from "../units/unitSystem";
import { type CoilShape, elementHalves, widestElement, windingRadius } from "./coilShape";
import { Dimension } from "./Dimension";
import { type View, xOf, yOf } from "./view";

interface DimensionsProps {
  view: View;
  /** the sizes in the texts */
  shape: CoilShape;
  /** the sizes as drawn, which place the dimensions */
  drawn: CoilShape;
  system: UnitSystem;
}

const OFFSET = 26;

/** The main dimensions, outside the outline where there is space. */
export function Dimensions({ view, shape, drawn, system }: DimensionsProps) {
  const { secondary, topLoad } = drawn;
  const length = (value: number): string => formatQuantity(value, "length", system).text;
  const at = (radius: number, height: number) => ({ x: xOf(view, radius), y: yOf(view, height) });
  const winding = windingRadius(secondary);
  const windingTop = secondary.baseHeight + secondary.windingLength;
  const widest = topLoad.elements[widestElement(topLoad.elements)];
  const outerOf = ({ primary: of }: CoilShape): number => radiusAtTurn(of, of.turns) + of.tubeDiameter / 2;
  const outer = outerOf(drawn);
  const labelled = shape.topLoad.elements[widestElement(topLoad.elements)];
  return (
    <g>
      <Dimension
        from={at(-winding, secondary.baseHeight)}
        to={at(-winding, windingTop)}
        offset={-OFFSET}
        text={length(shape.secondary.windingLength)}
      />
      {widest && (
        <>
          <Dimension
            from={at(-elementHalves(widest).halfWidth, widest.centreHeight)}
            to={at(elementHalves(widest).halfWidth, widest.centreHeight)}
            offset={-elementHalves(widest).halfHeight * view.scale - OFFSET}
            text={`Ø ${length(2 * elementHalves(labelled).halfWidth)}`}
          />
          <Dimension
            from={at(-elementHalves(widest).halfWidth, 0)}
            to={at(-elementHalves(widest).halfWidth, widest.centreHeight)}
            offset={-OFFSET}
            text={length(labelled.centreHeight)}
          />
        </>
      )}
      <Dimension
        from={at(-outer, 0)}
        to={at(outer, 0)}
        offset={OFFSET}
        text={`Ø ${length(2 * outerOf(shape))}`}
      />
    </g>
  );
}
