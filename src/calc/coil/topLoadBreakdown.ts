/** The breakout voltage of the top load on its coil. */
import type { Air, TopLoad } from "../design-parts";
import { criticalField, pointBreakoutVoltage, type VoltageBand } from "./breakout";
import type { ElectricField } from "./electricField";
import type { SecondaryMode } from "./secondaryModes";
import { topLoadFields } from "./topLoadField";

export interface TopLoadBreakdown {
  /** V/m per volt at the top, largest of all elements */
  surfaceFieldPerVolt: number;
  /** V */
  breakoutVoltage: number;
  /** V, of the breakout point; null without one */
  breakoutVoltageAtPoint: VoltageBand | null;
}

/** Breakout of a top load whose field is solved, in a mode. */
export function topLoadBreakdown(
  field: ElectricField,
  mode: SecondaryMode,
  { elements, surfaceFactor, breakoutPoint }: TopLoad,
  air: Air,
): TopLoadBreakdown {
  const fields = topLoadFields(field, mode);
  const surfaceFieldPerVolt = Math.max(...fields.map((each) => each.largest));
  const voltages = fields.map(
    (each, index) => criticalField(elements[index], air, surfaceFactor) / each.largest,
  );
  return {
    surfaceFieldPerVolt,
    breakoutVoltage: Math.min(...voltages),
    breakoutVoltageAtPoint: breakoutPoint
      ? pointBreakoutVoltage(breakoutPoint, surfaceFieldPerVolt, air)
      : null,
  };
}
