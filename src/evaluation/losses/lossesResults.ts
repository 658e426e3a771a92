/** Results of the losses, in SI units. */
import type { LossShares } from "../../calc/circuit/lossShares";

/** The losses of each circuit, as computed; a measured Q does not change the parts. */
export interface LossesResult {
  /** referred to the largest current of the fundamental */
  secondary: LossShares<"directCurrent" | "skin" | "proximity" | "allowance">;
  primary: LossShares<"tube" | "bank" | "switches" | "allowance">;
}
