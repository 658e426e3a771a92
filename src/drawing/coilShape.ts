/** The parts of a design that the drawing shows, and the space they take. */
import { heightAtTurn, type PrimaryShape, radiusAtTurn } from "../calc/coil/primaryGeometry";
import type { BreakoutPoint, Primary, Secondary, TopLoadElement } from "../calc/design-parts";
import type { Design } from "../design/design";
import type { Extent } from "./view";

export type CoilShape = Pick<Design, "secondary" | "topLoad" | "primary">;

/** A section through the primary's tube. */
export interface TurnSection {
  /** turns from the start */
  turn: number;
  /** m, negative on the left */
  radius: number;
  height: number;
  active: boolean;
}

/** No winding of tube has more turns; the rest is not drawn. */
const MOST_SECTIONS = 160;

/**
 * Sections of the spiral in the plane of the drawing: on the right at whole turns, on the left half a
 * turn later, as in a cut through the real winding.
 */
export function turnSections(primary: PrimaryShape & Pick<Primary, "tap">): TurnSection[] {
  const count = Math.min(MOST_SECTIONS, Math.floor(2 * primary.turns + 1e-9));
  return Array.from({ length: count + 1 }, (_, half) => {
    const turn = half / 2;
    const side = half % 2 === 0 ? 1 : -1;
    return {
      turn,
      radius: side * radiusAtTurn(primary, turn),
      height: heightAtTurn(primary, turn),
      active: turn <= primary.tap + 1e-9,
    };
  });
}

/** m, half the height and half the width of an element of the top load. */
export function elementHalves(element: TopLoadElement): { halfHeight: number; halfWidth: number } {
  if (element.shape === "sphere")
    return { halfHeight: element.diameter / 2, halfWidth: element.diameter / 2 };
  return { halfHeight: element.tubeDiameter / 2, halfWidth: element.outerDiameter / 2 };
}

/** Index of the element that carries the breakout point: the widest. */
export function widestElement(elements: readonly TopLoadElement[]): number {
  return elements.reduce(
    (widest, element, index) =>
      elementHalves(element).halfWidth > elementHalves(elements[widest]).halfWidth ? index : widest,
    0,
  );
}

function reach(elements: readonly TopLoadElement[], point: BreakoutPoint | null): number {
  const widest = Math.max(0, ...elements.map((element) => elementHalves(element).halfWidth));
  return widest + (point && elements.length > 0 ? point.length : 0);
}

export function windingRadius({ formerDiameter, wire }: Secondary): number {
  return formerDiameter / 2 + wire.overallDiameter;
}

/** The space that the whole coil takes, without its dimension lines. */
export function coilExtent({ secondary, topLoad, primary }: CoilShape): Extent {
  const outermost =
    Math.max(primary.innerRadius, radiusAtTurn(primary, primary.turns)) + primary.tubeDiameter / 2;
  const rail = primary.strikeRail ? primary.strikeRail.radius + primary.strikeRail.tubeDiameter / 2 : 0;
  const tops = topLoad.elements.map((element) => element.centreHeight + elementHalves(element).halfHeight);
  return {
    halfWidth: Math.max(
      outermost,
      rail,
      windingRadius(secondary),
      reach(topLoad.elements, topLoad.breakoutPoint),
    ),
    height: Math.max(
      secondary.baseHeight + secondary.windingLength,
      heightAtTurn(primary, primary.turns) + primary.tubeDiameter,
      primary.strikeRail?.height ?? 0,
      ...tops,
    ),
  };
}

/** The tap nearest to a point of the drawing: the point projected onto the slope of the winding, limited to the conductor. */
export function tapAtPoint(primary: PrimaryShape, radius: number, height: number): number {
  const radial = radiusAtTurn(primary, 1) - primary.innerRadius;
  const axial = heightAtTurn(primary, 1) - primary.baseHeight;
  const along = (Math.abs(radius) - primary.innerRadius) * radial + (height - primary.baseHeight) * axial;
  const turn = along / (radial * radial + axial * axial);
  return Math.min(Math.max(turn, 0.1), primary.turns);
}
