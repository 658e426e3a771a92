/** The load that consecutive bursts may still put on mains, bus, bank and junction. */

import { type CostCurve, costCurve, longestWithin } from "./burstCost";
import { type BurstDemand, burstDemands } from "./burstDemand";
import { type CoilLoad, meanTimeCurve } from "./coilLoad";
import { JunctionTrack } from "./junctionTrack";

const NANOSECONDS = 1e9;

export class LoadBudget {
  readonly #window: number;
  readonly #allowance: number;
  readonly #demandAt: (nanoseconds: number) => BurstDemand;
  readonly #meanTime: CostCurve;
  readonly #junctionRise: CostCurve;
  /** ns */
  readonly #ceiling: number;
  readonly #junction: JunctionTrack;
  #starts: number[] = [];
  #meanTimes: number[] = [];
  #first = 0;
  #sum = 0;

  constructor(load: CoilLoad) {
    this.#window = load.window;
    this.#allowance = load.junctionAllowance;
    this.#demandAt = burstDemands(load);
    this.#meanTime = meanTimeCurve(load);
    this.#junctionRise = costCurve(load.costs, (cost) => cost.junctionRise);
    const ceiling = load.ceilings.reduce((least, { onTime }) => Math.min(least, onTime), Number.MAX_VALUE);
    this.#ceiling = Math.floor(ceiling * NANOSECONDS);
    this.#junction = new JunctionTrack(load.thermal);
  }

  /** s of the window that is not yet used up at a start, s. */
  #meanTimeLeft(start: number): number {
    while (this.#first < this.#starts.length && this.#starts[this.#first] <= start - this.#window)
      this.#sum -= this.#meanTimes[this.#first++];
    if (this.#first === this.#starts.length) this.#forget();
    return this.#window - this.#sum;
  }

  /** When the window is empty its sum is reset, so that rounding errors do not accumulate. */
  #forget(): void {
    this.#starts = [];
    this.#meanTimes = [];
    this.#first = 0;
    this.#sum = 0;
  }

  /**
   * The on-time, up to a wanted one, that a burst may have now, ns; later calls must not ask for earlier ones.
   * @param start s
   * @param wanted ns
   */
  most(start: number, wanted: number): number {
    const capped = Math.min(wanted, this.#ceiling);
    const { meanTime, junctionRise } = this.#demandAt(capped);
    const meanTimeLeft = this.#meanTimeLeft(start);
    const riseLeft = this.#allowance - this.#junction.riseAt(start);
    if (meanTime <= meanTimeLeft && junctionRise <= riseLeft) return capped;
    const [byMean, byHeat] = [
      longestWithin(this.#meanTime, meanTimeLeft),
      longestWithin(this.#junctionRise, riseLeft),
    ];
    return Math.min(capped, Math.floor(Math.min(byMean, byHeat) * NANOSECONDS));
  }

  /** @param start s @param onTime ns */
  take(start: number, onTime: number): void {
    const { meanTime, heat } = this.#demandAt(onTime);
    this.#starts.push(start);
    this.#meanTimes.push(meanTime);
    this.#sum += meanTime;
    this.#junction.heat(heat, start);
  }
}
