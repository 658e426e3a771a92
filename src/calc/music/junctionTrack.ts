/**
 * A junction over its case from burst to burst. Each burst's heat is assumed to arrive at once at its end, which
 * leaves no element colder than it is: the rise is an upper estimate.
 * Source: iec60747, transient thermal impedance: a Foster network, each element of first order.
 */
import type { FosterElement } from "../design-parts";

/** The effect of one burst on each element: the share of its rise that is left after the burst, and the rise added. */
export interface HeatStep {
  kept: number[];
  /** K */
  added: number[];
  /** s */
  lasts: number;
}

/** @param energy J of heat @param lasts s */
export function heatStep(network: readonly FosterElement[], energy: number, lasts: number): HeatStep {
  return {
    kept: network.map(({ timeConstant }) => Math.exp(-lasts / timeConstant)),
    added: network.map(({ resistance, timeConstant }) => (energy * resistance) / timeConstant),
    lasts,
  };
}

export class JunctionTrack {
  readonly #decays: number[];
  readonly #rises: number[];
  #time = 0;

  constructor(network: readonly FosterElement[]) {
    this.#decays = network.map(({ timeConstant }) => -1 / timeConstant);
    this.#rises = network.map(() => 0);
  }

  /** K over the case at a time, s, no earlier than before. */
  riseAt(time: number): number {
    const passed = time - this.#time;
    if (passed > 0) this.#time = time;
    let sum = 0;
    for (let index = 0; index < this.#rises.length; index++) {
      if (passed > 0) this.#rises[index] *= Math.exp(passed * this.#decays[index]);
      sum += this.#rises[index];
    }
    return sum;
  }

  /** Adds the heat of a burst that starts at a time, s; nothing cools if it starts before the last has ended. */
  heat({ kept, added, lasts }: HeatStep, start: number): void {
    this.riseAt(start);
    const alone = this.#time === start;
    for (let index = 0; index < this.#rises.length; index++)
      this.#rises[index] = this.#rises[index] * (alone ? kept[index] : 1) + added[index];
    this.#time = Math.max(this.#time, start + lasts);
  }
}

/**
 * K per joule that a train of bursts leaves at the start of each, in the same way: a geometric series.
 * @param period s, from burst to burst
 * @param rest s, of it after a burst has ended
 */
export function repeatedRisePerHeat(network: readonly FosterElement[], period: number, rest: number): number {
  return network.reduce((sum, { resistance, timeConstant }) => {
    const left = Math.exp(-Math.max(0, rest) / timeConstant) / -Math.expm1(-period / timeConstant);
    return sum + (resistance / timeConstant) * left;
  }, 0);
}
