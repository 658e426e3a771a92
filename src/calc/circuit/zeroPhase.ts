/** Frequencies at which the bridge sees a pure resistance, where feedback from the current can lock. */
import { magnitude } from "../linear/complex";
import { type Network, sineResponse } from "./network";

export interface ZeroPhaseCrossing {
  /** Hz */
  frequency: number;
  /** Ω, real there */
  resistance: number;
  /** 1: from capacitive to inductive as the frequency rises (series resonance); −1: the other way */
  slope: 1 | -1;
}

const PARTS = 400;

function reactance(network: Network, frequency: number): number {
  return sineResponse(network, frequency).inputImpedance.im;
}

function bisect(network: Network, from: number, to: number): number {
  const sign = Math.sign(reactance(network, from));
  let [low, high] = [from, to];
  while (high - low > 1e-12 * high) {
    const middle = 0.5 * (low + high);
    if (Math.sign(reactance(network, middle)) === sign) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}

/**
 * Zero-phase crossings of the input impedance between two frequencies.
 * @param from Hz, above 0
 * @param to Hz
 * @param also Hz, where the curve may turn sharply: the poles, so that a narrow pair is not stepped over
 */
export function zeroPhaseCrossings(
  network: Network,
  from: number,
  to: number,
  also: readonly number[] = [],
): ZeroPhaseCrossing[] {
  const row = Array.from({ length: PARTS + 1 }, (_, index) => from * (to / from) ** (index / PARTS));
  const flanks = also.flatMap((pole) => [0.999, 1, 1.001].map((part) => part * pole));
  const places = [...row, ...flanks].filter((f) => f >= from && f <= to).sort((a, b) => a - b);
  const values = places.map((frequency) => reactance(network, frequency));
  return places.slice(1).flatMap((place, index): ZeroPhaseCrossing[] => {
    const [before, after] = [values[index], values[index + 1]];
    if (before === 0 || before * after > 0) return [];
    const frequency = bisect(network, places[index], place);
    const resistance = magnitude(sineResponse(network, frequency).inputImpedance);
    return [{ frequency, resistance, slope: before < 0 ? 1 : -1 }];
  });
}
