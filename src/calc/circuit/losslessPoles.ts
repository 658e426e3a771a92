/**
 * Both poles near the fundamental without loss and load, Hz.
 *
 * With x = ω² the primary loop reads 1/C − xL(x) = x²M₁²/(1/C₁ − xL₁), where the overtones only add to
 * the primary's inductance, L(x) = L + x·Σ Mₙ²/(1/Cₙ − xLₙ): two coupled circuits, solved again as L
 * follows the pole.
 *
 * Source: F. E. Terman, Radio Engineers' Handbook (1943), sec. 3, two coupled circuits.
 */
import type { Network } from "./network";

const ROUNDS = 6;

/** ω² of two coupled circuits, the lower or the upper root. */
function twoCircuits({ primary, modes }: Network, primaryInductance: number, upper: boolean): number {
  const { inductance, capacitance, mutual } = modes[0];
  const first = 1 / (primaryInductance * primary.capacitance);
  const second = 1 / (inductance * capacitance);
  const uncoupled = 1 - (mutual * mutual) / (primaryInductance * inductance);
  const sum = first + second;
  const root = Math.sqrt(sum * sum - 4 * uncoupled * first * second);
  return (upper ? sum + root : sum - root) / (2 * uncoupled);
}

/** The primary's inductance with what the overtones add to it at ω². */
function withOvertones({ primary, modes }: Network, x: number): number {
  return modes
    .slice(1)
    .reduce(
      (sum, { inductance, capacitance, mutual }) =>
        sum + (x * mutual * mutual) / (1 / capacitance - x * inductance),
      primary.inductance,
    );
}

function pole(network: Network, upper: boolean): number {
  let x = twoCircuits(network, network.primary.inductance, upper);
  for (let round = 0; round < ROUNDS; round++) x = twoCircuits(network, withOvertones(network, x), upper);
  return Math.sqrt(x) / (2 * Math.PI);
}

/** Lower and upper pole, Hz; resistances and load of the network do not count. */
export function losslessPoles(network: Network): { lower: number; upper: number } {
  return { lower: pole(network, false), upper: pole(network, true) };
}
