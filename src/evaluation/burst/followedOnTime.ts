import { longestOnTime } from "../../calc/circuit/burst";
import type { DesignParts } from "../../calc/design-parts";
import { networkOf } from "../response/coupledNetwork";
import { solve } from "../solved";

/** s, the longest on-time that a burst of the design is followed over; null while a circuit has no solution. */
export function followedOnTime(design: DesignParts): number | null {
  const { secondary, primary, coupling } = solve(design);
  if (!primary || !secondary || !coupling) return null;
  const most = longestOnTime(networkOf(primary.circuit, secondary, coupling.mutuals, null));
  return most > 0 ? most : null;
}
