import type { SolvedModes } from "../../calc/circuit/secondaryCircuit";
import type { ElectricField } from "../../calc/coil/electricField";
import { isolatedCapacitance, topLoadBody } from "../../calc/coil/topLoadBody";
import { topLoadBreakdown } from "../../calc/coil/topLoadBreakdown";
import type { DesignParts } from "../../calc/design-parts";
import { areSolvable } from "../solvable";
import { stage } from "../stage";
import type { TopLoadResult } from "./topLoadResults";

/** Size and capacitance of the top load on its own; null without one, or if its elements cross. */
const bodyStage = stage(
  (design) => design.topLoad.elements,
  (elements) => {
    const capacitance = elements.length > 0 ? isolatedCapacitance(elements) : null;
    return capacitance === null ? null : { capacitance, ...topLoadBody(elements) };
  },
);

const breakdownStage = stage(
  (design) => ({ topLoad: design.topLoad, air: design.air }),
  ({ topLoad, air }, field: ElectricField, modes: SolvedModes) =>
    topLoadBreakdown(field, modes.loaded[0], topLoad, air),
);

/** The top load, alone and in place. */
export function topLoadResult(
  design: DesignParts,
  field: ElectricField | null,
  modes: SolvedModes | null,
): TopLoadResult | null {
  if (!areSolvable(design, ["topLoad", "air"])) return null;
  const body = bodyStage(design);
  if (!body || !field?.loaded || !modes) return null;
  return { ...body, ...breakdownStage(design, field, modes) };
}

/** V at which a spark starts to grow, at the breakout point if there is one; null without a top load. */
export function breakoutVoltage(topLoad: TopLoadResult | null): number | null {
  return topLoad && (topLoad.breakoutVoltageAtPoint?.typical ?? topLoad.breakoutVoltage);
}
