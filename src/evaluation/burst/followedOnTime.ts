import { longestOnTime } from "../../calc/circuit/burst";
import { coupledNetwork } from "../../calc/circuit/coupledNetwork";
import type { SolvedCoil } from "../solvedCoil";

/** s, the longest on-time that a burst of the design is followed over; null while a circuit has no solution. */
export function followedOnTime({ secondary, primary, coupling }: SolvedCoil): number | null {
  if (!primary || !secondary || !coupling) return null;
  const most = longestOnTime(coupledNetwork(primary, secondary, coupling.mutuals, null));
  return most > 0 ? most : null;
}
