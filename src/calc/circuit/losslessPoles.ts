/**
 * Both poles near the fundamental without loss and load, Hz.
 *
 * With x = ω² the primary loop reads 1/C − xL(x) = x²M₁²/(1/C₁ − xL₁), where the overtones only add to
 * the primary's inductance, L(x) = L + x·Σ Mₙ²/(1/Cₙ − xLₙ): two coupled circuits, solved again as L
 * follows the pole. There is one pole between each mode's own frequency and the next.
 *
 * Source: terman1943, sec. 3, two coupled circuits.
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

/** Halvings and doublings: enough to tell two neighbouring numbers apart. */
const MOST_HALVINGS = 60;
const MOST_DOUBLINGS = 60;

/** What is zero at a pole, falling between one mode's own ω² and the next. */
function residue({ primary, modes }: Network, x: number): number {
  return modes.reduce(
    (sum, { inductance, capacitance, mutual }) =>
      sum - (x * mutual) ** 2 / (1 / capacitance - x * inductance),
    1 / primary.capacitance - x * primary.inductance,
  );
}

/** ω² of the one pole between the first mode's own and nothing, or the next mode's own, by halving. */
function soughtBetween(network: Network, upper: boolean): number {
  const [first, second] = network.modes
    .map(({ inductance, capacitance }) => 1 / (inductance * capacitance))
    .sort((a, b) => a - b);
  let [low, high] = upper ? [first, second ?? 2 * first] : [0, first];
  if (upper && second === undefined)
    for (let count = 0; count < MOST_DOUBLINGS && residue(network, high) > 0; count++) high *= 2;
  for (let count = 0; count < MOST_HALVINGS; count++) {
    const middle = 0.5 * (low + high);
    if (residue(network, middle) > 0) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}

/** If an overtone is so near that the iteration fails, the pole is searched for between the modes. */
function pole(network: Network, upper: boolean): number {
  let x = twoCircuits(network, network.primary.inductance, upper);
  for (let round = 0; round < ROUNDS; round++) x = twoCircuits(network, withOvertones(network, x), upper);
  return Math.sqrt(x > 0 && x < Number.POSITIVE_INFINITY ? x : soughtBetween(network, upper)) / (2 * Math.PI);
}

/** Lower and upper pole, Hz; resistances and load of the network do not count. */
export function losslessPoles(network: Network): { lower: number; upper: number } {
  return { lower: pole(network, false), upper: pole(network, true) };
}
