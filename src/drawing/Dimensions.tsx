import { radiusAtTurn } from "../calc/coil/primaryGeometry";
import { formatQuantity } from "../units/format";
import type { UnitSystem } from "../units/unitSystem";
import { type CoilShape, elementHalves, widestElement, windingRadius } from "./coilShape";
import { Dimension } from "./Dimension";
import { type View, xOf, yOf } from "./view";

interface DimensionsProps {
  view: View;
  /** what the figures say */
  shape: CoilShape;
  /** where they stand */
  drawn: CoilShape;
  system: UnitSystem;
}

const LEVEL = 26;

/** The dimensions that a builder asks for first, outside the outline where there is room. */
export function Dimensions({ view, shape, drawn, system }: DimensionsProps) {
  const { secondary, topLoad } = drawn;
  const length = (value: number): string => formatQuantity(value, "length", system).text;
  const at = (radius: number, height: number) => ({ x: xOf(view, radius), y: yOf(view, height) });
  const winding = windingRadius(secondary);
  const windingTop = secondary.baseHeight + secondary.windingLength;
  const widest = topLoad.elements[widestElement(topLoad.elements)];
  const outerOf = ({ primary: of }: CoilShape): number => radiusAtTurn(of, of.turns) + of.tubeDiameter / 2;
  const outer = outerOf(drawn);
  const told = shape.topLoad.elements[widestElement(topLoad.elements)];
  return (
    <g>
      <Dimension
        from={at(-winding, secondary.baseHeight)}
        to={at(-winding, windingTop)}
        offset={-LEVEL}
        text={length(shape.secondary.windingLength)}
      />
      {widest && (
        <>
          <Dimension
            from={at(-elementHalves(widest).halfWidth, widest.centreHeight)}
            to={at(elementHalves(widest).halfWidth, widest.centreHeight)}
            offset={-elementHalves(widest).halfHeight * view.scale - LEVEL}
            text={`Ø ${length(2 * elementHalves(told).halfWidth)}`}
          />
          <Dimension
            from={at(-elementHalves(widest).halfWidth, 0)}
            to={at(-elementHalves(widest).halfWidth, widest.centreHeight)}
            offset={-LEVEL}
            text={length(told.centreHeight)}
          />
        </>
      )}
      <Dimension
        from={at(-outer, 0)}
        to={at(outer, 0)}
        offset={LEVEL}
        text={`Ø ${length(2 * outerOf(shape))}`}
      />
    </g>
  );
}
