import type { LossesResult, LossPart } from "../evaluation";
import { loopResistance, type PrimaryCircuit } from "../primary/primaryStages";
import type { SecondaryCircuit } from "../secondary/secondaryCircuit";

function shares<Name extends string>(parts: Record<Name, number>) {
  const names = Object.keys(parts) as Name[];
  const total = names.reduce((sum, name) => sum + parts[name], 0);
  const entries = names.map((name) => [
    name,
    { resistance: parts[name], share: total > 0 ? parts[name] / total : 0 },
  ]);
  return { total, ...(Object.fromEntries(entries) as Record<Name, LossPart>) };
}

function primaryParts({ resistance }: PrimaryCircuit, allowance: number) {
  const without = 1 / (1 + allowance);
  return {
    tube: resistance.tube * without,
    bank: resistance.bank * without,
    switches: resistance.switches * without,
    allowance: loopResistance(resistance) * allowance * without,
  };
}

/** Losses of both circuits at their fundamentals, each as a share of its own circuit. */
export function lossesResult(
  secondary: SecondaryCircuit | null,
  primary: PrimaryCircuit | null,
  allowance: number,
): LossesResult | null {
  if (!secondary || !primary) return null;
  return { secondary: shares(secondary.lossParts), primary: shares(primaryParts(primary, allowance)) };
}
