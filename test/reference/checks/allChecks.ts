import type { ReferenceCheck } from "../check";
import { BURST_CHECKS } from "./burst";
import { CAPACITANCE_CHECKS } from "./capacitance";
import { ELECTROSTATICS_CHECKS } from "./coilElectrostatics";
import { HAT_FUNCTION_CHECKS } from "./hatFunctions";
import { LOSS_CHECKS } from "./losses";
import { MAGNETIC_LOOP_CHECKS } from "./magneticLoops";
import { PRIMARY_CHECKS } from "./primary";
import { PUBLISHED_CAPACITANCE_CHECKS } from "./publishedCapacitance";
import { MODE_CHECKS } from "./secondaryModes";

/** Every list of checks, in the order of the theory page's sections. */
export const ALL_CHECKS: readonly ReferenceCheck[] = [
  ...CAPACITANCE_CHECKS,
  ...PUBLISHED_CAPACITANCE_CHECKS,
  ...ELECTROSTATICS_CHECKS,
  ...HAT_FUNCTION_CHECKS,
  ...MODE_CHECKS,
  ...MAGNETIC_LOOP_CHECKS,
  ...PRIMARY_CHECKS,
  ...LOSS_CHECKS,
  ...BURST_CHECKS,
];
