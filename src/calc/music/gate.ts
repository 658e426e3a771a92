/**
 * One coil's gate under construction: pulses are offered in order of time, and the result never
 * exceeds a limit. Times are whole nanoseconds, so that the limits hold to the last digit written.
 */

import type { CoilLimits } from "./lane";
import { LoadBudget } from "./loadBudget";

const NANOSECONDS = 1e9;

/** Why a pulse was changed. */
export type Change =
  | "delayed"
  | "shortened by duty"
  | "shortened by load"
  | "shortened beside others"
  | "shortened by limit"
  | "too short to sound"
  | "dropped for the gap"
  | "dropped for duty"
  | "dropped for load";

export interface Gate {
  /** ns */
  starts: number[];
  /** ns */
  onTimes: number[];
}

/** A gate to be read, its numbers in plain or typed arrays. */
export interface GateToRead {
  /** ns */
  readonly starts: ArrayLike<number>;
  /** ns */
  readonly onTimes: ArrayLike<number>;
}

interface GateLimits {
  /** ns */
  gap: number;
  longest: number;
  window: number;
  budget: number;
}

/** ns; shorter pulses are inaudible and only cost turn-off loss; common practice, no source. */
export const SHORTEST_PULSE = 1000;

export class GateBuilder {
  readonly gate: Gate = { starts: [], onTimes: [] };
  readonly #limits: GateLimits;
  /** null if the load of the bursts is unknown */
  readonly #budget: LoadBudget | null;
  #windowFirst = 0;
  #windowSum = 0;

  /** @param before an earlier gate, whose bursts still count as heat and load */
  constructor(limits: CoilLimits, before?: GateBuilder) {
    this.#limits = {
      gap: Math.ceil(limits.shortestGap * NANOSECONDS),
      longest: Math.floor(limits.longestOnTime * NANOSECONDS),
      window: Math.ceil(limits.dutyWindow * NANOSECONDS),
      budget: Math.floor(limits.dutyLimit * limits.dutyWindow * NANOSECONDS),
    };
    this.#budget = before ? before.#budget : limits.load && new LoadBudget(limits.load);
  }

  get #count(): number {
    return this.gate.starts.length;
  }

  #end(index: number): number {
    return this.gate.starts[index] + this.gate.onTimes[index];
  }

  /** On-time, in ns, within the window that ends at a start; the window of any later end holds less. */
  #onTimeBefore(start: number): number {
    const from = start - this.#limits.window;
    while (this.#windowFirst < this.#count && this.#end(this.#windowFirst) <= from) {
      this.#windowSum -= this.gate.onTimes[this.#windowFirst];
      this.#windowFirst++;
    }
    if (this.#windowFirst === this.#count) return 0;
    return this.#windowSum - Math.max(0, from - this.gate.starts[this.#windowFirst]);
  }

  /** ns, as much of a wanted on-time as mains, bus, bank and junction allow. */
  #leftByLoad(start: number, wanted: number): number {
    return this.#budget ? this.#budget.most(start / NANOSECONDS, wanted) : wanted;
  }

  #push(start: number, length: number): void {
    this.gate.starts.push(start);
    this.gate.onTimes.push(length);
    this.#windowSum += length;
    this.#budget?.take(start / NANOSECONDS, length);
  }

  /**
   * Offers a pulse; later calls must not offer earlier ones.
   * @param time s
   * @param onTime s
   * @param patience s, longest delay before it is dropped
   * @returns what had to be changed, or null
   */
  offer(time: number, onTime: number, patience: number): Change | null {
    const wanted = Math.floor(onTime * NANOSECONDS);
    const asked = Math.ceil(time * NANOSECONDS);
    const earliest = this.#count === 0 ? asked : this.#end(this.#count - 1) + this.#limits.gap;
    if (earliest - asked > patience * NANOSECONDS) return "dropped for the gap";
    const start = Math.max(asked, earliest);
    const left = this.#limits.budget - this.#onTimeBefore(start);
    const byInterrupter = Math.min(wanted, this.#limits.longest, left);
    const length = this.#leftByLoad(start, Math.max(0, byInterrupter));
    if (length < SHORTEST_PULSE) {
      if (left < SHORTEST_PULSE) return "dropped for duty";
      return length < byInterrupter ? "dropped for load" : "too short to sound";
    }
    this.#push(start, length);
    if (length < byInterrupter) return "shortened by load";
    if (length < wanted) return length === left ? "shortened by duty" : "shortened by limit";
    return start > asked ? "delayed" : null;
  }
}
