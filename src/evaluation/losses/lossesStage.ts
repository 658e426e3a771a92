import { lossShares, primaryLossParts } from "../../calc/circuit/lossShares";
import type { PrimaryCircuit } from "../../calc/circuit/primaryCircuit";
import type { SecondaryCircuit } from "../../calc/circuit/secondaryCircuit";
import type { LossesResult } from "./lossesResults";

/** Losses of both circuits at their fundamentals, each as a share of its own circuit. */
export function lossesResult(
  secondary: SecondaryCircuit | null,
  primary: PrimaryCircuit | null,
  allowance: number,
): LossesResult | null {
  if (!secondary || !primary) return null;
  return {
    secondary: lossShares(secondary.lossParts),
    primary: lossShares(primaryLossParts(primary, allowance)),
  };
}
