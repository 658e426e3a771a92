/** The losses of a circuit, each as a share of its total. */
import { loopResistance, type PrimaryCircuit } from "./primaryCircuit";

/** One of the losses of a circuit. */
export interface LossPart {
  /** Ω */
  resistance: number;
  /** of the circuit's total */
  share: number;
}

export type LossShares<Name extends string> = { total: number } & Record<Name, LossPart>;

/** Resistances in series, Ω, as shares of their sum. */
export function lossShares<Name extends string>(parts: Record<Name, number>): LossShares<Name> {
  const names = Object.keys(parts) as Name[];
  const total = names.reduce((sum, name) => sum + parts[name], 0);
  const entries = names.map((name) => [
    name,
    { resistance: parts[name], share: total > 0 ? parts[name] / total : 0 },
  ]);
  return { total, ...(Object.fromEntries(entries) as Record<Name, LossPart>) };
}

/** Losses of the primary circuit, Ω, with its allowance listed separately. */
export function primaryLossParts({ resistance }: Pick<PrimaryCircuit, "resistance">, allowance: number) {
  const without = 1 / (1 + allowance);
  return {
    tube: resistance.tube * without,
    bank: resistance.bank * without,
    switches: resistance.switches * without,
    allowance: loopResistance(resistance) * allowance * without,
  };
}
