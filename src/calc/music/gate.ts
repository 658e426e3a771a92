/**
 * One coil's gate under construction: pulses are offered in order of time, and what comes out never
 * passes a limit. Times are whole nanoseconds, so that the limits hold to the last digit written.
 */
import type { CoilLimits } from "./lane";

const NANOSECONDS = 1e9;

/** Why a pulse was changed. */
export type Change =
  | "delayed"
  | "shortened by duty"
  | "shortened by limit"
  | "too short to sound"
  | "dropped for the gap"
  | "dropped for duty";

export interface Gate {
  /** ns */
  starts: number[];
  /** ns */
  onTimes: number[];
}

interface GateLimits {
  /** ns */
  gap: number;
  longest: number;
  window: number;
  budget: number;
}

/** Below it a pulse makes no sound that is worth its turn-off: ns; common practice, no source. */
const SHORTEST_PULSE = 1000;

export class GateBuilder {
  readonly gate: Gate = { starts: [], onTimes: [] };
  readonly #limits: GateLimits;
  #windowFirst = 0;
  #windowSum = 0;

  constructor(limits: CoilLimits) {
    this.#limits = {
      gap: Math.ceil(limits.shortestGap * NANOSECONDS),
      longest: Math.floor(limits.longestOnTime * NANOSECONDS),
      window: Math.ceil(limits.dutyWindow * NANOSECONDS),
      budget: Math.floor(limits.dutyLimit * limits.dutyWindow * NANOSECONDS),
    };
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

  /**
   * Offers a pulse; later calls must not offer earlier ones.
   * @param time s
   * @param onTime s
   * @param patience s, how long it may be delayed before it is dropped
   * @returns what had to be changed, null where nothing
   */
  offer(time: number, onTime: number, patience: number): Change | null {
    const wanted = Math.floor(onTime * NANOSECONDS);
    const asked = Math.ceil(time * NANOSECONDS);
    const earliest = this.#count === 0 ? asked : this.#end(this.#count - 1) + this.#limits.gap;
    if (earliest - asked > patience * NANOSECONDS) return "dropped for the gap";
    const start = Math.max(asked, earliest);
    const left = this.#limits.budget - this.#onTimeBefore(start);
    const length = Math.min(wanted, this.#limits.longest, left);
    if (length < SHORTEST_PULSE) return left < SHORTEST_PULSE ? "dropped for duty" : "too short to sound";
    this.gate.starts.push(start);
    this.gate.onTimes.push(length);
    this.#windowSum += length;
    if (length < wanted) return length === left ? "shortened by duty" : "shortened by limit";
    return start > asked ? "delayed" : null;
  }
}
