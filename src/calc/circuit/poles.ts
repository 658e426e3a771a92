/** Natural frequencies of the coupled network near the fundamental. */
import {
  add,
  type Complex,
  complex,
  divide,
  magnitude,
  multiply,
  scale,
  square,
  squareRoot,
  subtract,
} from "../linear/complex";
import { type Network, networkDeterminant, secondaryDeterminant } from "./network";

export interface Pole {
  /** Hz, |Im s|/2π */
  frequency: number;
  /** ω/(2·decay); Infinity without loss */
  qualityFactor: number;
}

export interface PolePair {
  lower: Pole;
  upper: Pole;
}

type Determinant = (network: Network, s: Complex) => Complex;

const MOST_STEPS = 60;

/**
 * Zero of a determinant by Muller's parabola, which converges from a real guess to a complex zero.
 *
 * Source: muller1956.
 * @param known zeros to divide out, so that a second zero is found and not the first again
 */
function zero(
  determinant: Determinant,
  network: Network,
  guess: number,
  known: readonly Complex[],
): Complex | null {
  const value = (s: Complex): Complex =>
    known.reduce((v, root) => divide(v, subtract(s, root)), determinant(network, s));
  let [a, b, c] = [0.999, 1.001, 1].map((part) => complex(-1e-3 * guess, guess * part));
  let [fa, fb, fc] = [value(a), value(b), value(c)];
  for (let step = 0; step < MOST_STEPS; step++) {
    const next = mullerStep(a, b, c, fa, fb, fc);
    if (!Number.isFinite(next.re) || !Number.isFinite(next.im)) return null;
    if (magnitude(subtract(next, c)) < 1e-10 * magnitude(next)) return rings(next) ? next : null;
    [a, b, c] = [b, c, next];
    [fa, fb, fc] = [fb, fc, value(next)];
  }
  return null;
}

/** A mode loaded beyond critical damping has a real root, which is not a pole at a frequency. */
function rings(s: Complex): boolean {
  return Math.abs(s.im) > 1e-3 * magnitude(s);
}

function mullerStep(a: Complex, b: Complex, c: Complex, fa: Complex, fb: Complex, fc: Complex): Complex {
  const first = divide(subtract(fc, fb), subtract(c, b));
  const other = divide(subtract(fc, fa), subtract(c, a));
  const second = divide(subtract(first, divide(subtract(fb, fa), subtract(b, a))), subtract(c, a));
  const slope = subtract(add(first, other), divide(subtract(fb, fa), subtract(b, a)));
  const spread = squareRoot(subtract(square(slope), scale(multiply(fc, second), 4)));
  const [plus, minus] = [add(slope, spread), subtract(slope, spread)];
  return subtract(c, divide(scale(fc, 2), magnitude(plus) > magnitude(minus) ? plus : minus));
}

function poleOf(s: Complex): Pole {
  const omega = Math.abs(s.im);
  return {
    frequency: omega / (2 * Math.PI),
    qualityFactor: s.re < 0 ? omega / (-2 * s.re) : Number.POSITIVE_INFINITY,
  };
}

/** Lossless poles of two coupled circuits, rad/s. Source: terman1943, sec. 3, eq. for ω at coupling k. */
function twoCircuitPoles({ primary, modes }: Network): [number, number] {
  const { inductance, capacitance, mutual } = modes[0];
  const first = 1 / (primary.inductance * primary.capacitance);
  const second = 1 / (inductance * capacitance);
  const coupling = (mutual * mutual) / (primary.inductance * inductance);
  const sum = first + second;
  const discriminant = Math.sqrt(sum * sum - 4 * (1 - coupling) * first * second);
  return [
    Math.sqrt((sum - discriminant) / (2 * (1 - coupling))),
    Math.sqrt((sum + discriminant) / (2 * (1 - coupling))),
  ];
}

/**
 * Both poles near the fundamental.
 * @param guess rad/s of both, from a neighbouring network; else those of two lossless circuits
 * @returns null if the search does not converge: an overdamped or broken network
 */
export function polePair(
  network: Network,
  guess: readonly [number, number] = twoCircuitPoles(network),
): PolePair | null {
  const lower = zero(networkDeterminant, network, guess[0], []);
  if (!lower) return null;
  const upper = zero(networkDeterminant, network, guess[1], [lower]);
  if (!upper) return null;
  const [first, second] = [poleOf(lower), poleOf(upper)];
  return first.frequency <= second.frequency
    ? { lower: first, upper: second }
    : { lower: second, upper: first };
}

/** The secondary's own pole with the load, primary open; null if the search does not converge. */
export function secondaryPole(network: Network): Pole | null {
  const { inductance, capacitance } = network.modes[0];
  const s = zero(secondaryDeterminant, network, 1 / Math.sqrt(inductance * capacitance), []);
  return s ? poleOf(s) : null;
}
