import { criticalField, pointBreakoutVoltage } from "../../calc/coil/breakout";
import type { ElectricField } from "../../calc/coil/electricField";
import { isolatedCapacitance, topLoadBody } from "../../calc/coil/topLoadBody";
import { topLoadFields } from "../../calc/coil/topLoadField";
import type { TopLoadResult } from "../evaluation";
import type { Modes } from "../secondary/secondaryModes";
import { areSolvable } from "../solvable";
import { stage } from "../stage";

/** Size and capacitance of the top load by itself; null where there is none or its elements cross. */
const bodyStage = stage(
  (design) => design.topLoad.elements,
  (elements) => {
    const capacitance = elements.length > 0 ? isolatedCapacitance(elements) : null;
    return capacitance === null ? null : { capacitance, ...topLoadBody(elements) };
  },
);

const inPlaceStage = stage(
  (design) => ({ topLoad: design.topLoad, air: design.air }),
  ({ topLoad, air }, field: ElectricField, modes: Modes) => {
    const fields = topLoadFields(field, modes.loaded[0]);
    const surfaceFieldPerVolt = Math.max(...fields.map((each) => each.largest));
    const voltages = fields.map(
      (each, index) => criticalField(topLoad.elements[index], air, topLoad.surfaceFactor) / each.largest,
    );
    return {
      surfaceFieldPerVolt,
      breakoutVoltage: Math.min(...voltages),
      breakoutVoltageAtPoint: topLoad.breakoutPoint
        ? pointBreakoutVoltage(topLoad.breakoutPoint, surfaceFieldPerVolt, air)
        : null,
    };
  },
);

/** The top load, alone and in place. */
export function topLoadResult(
  design: Parameters<typeof bodyStage>[0],
  field: ElectricField | null,
  modes: Modes | null,
): TopLoadResult | null {
  if (!areSolvable(design, ["topLoad", "air"])) return null;
  const body = bodyStage(design);
  if (!body || !field?.loaded || !modes) return null;
  return { ...body, ...inPlaceStage(design, field, modes) };
}

/** V at which a growing spark begins: at a point where there is one; null without a top load. */
export function breakoutVoltage(topLoad: TopLoadResult | null): number | null {
  return topLoad && (topLoad.breakoutVoltageAtPoint?.typical ?? topLoad.breakoutVoltage);
}
