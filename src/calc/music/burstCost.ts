/** The load of one burst by its on-time, from the design's own burst model. */
export interface BurstCost {
  /** s */
  onTime: number;
  /** J taken from the reservoir */
  energy: number;
  /** J of heat in the most heavily loaded device */
  switchHeat: number;
  /** K over the case that its junction reaches in a burst by itself */
  junctionRise: number;
  /** J of heat in one unit of the bank */
  bankHeat: number;
  /** s from the start until the primary current has ended, or until the next burst may begin */
  lasts: number;
  /** V, sag of the bus within the burst */
  sag: number;
  /** s, for which the burst alone uses up the limit of the mains circuit, */
  mainsTime: number;
  /** that of the bus before it falls too low, */
  busTime: number;
  /** and that of a unit of the bank */
  bankTime: number;
}

export type CostName = Exclude<keyof BurstCost, "onTime">;

/** A quantity that does not fall with on-time: linear between its points, constant below the first. */
export interface CostCurve {
  onTimes: number[];
  values: number[];
}

export function costCurve(costs: readonly BurstCost[], value: (cost: BurstCost) => number): CostCurve {
  return { onTimes: costs.map(({ onTime }) => onTime), values: costs.map(value) };
}

/** First index whose entry is not below a value; the length if there is none. */
function firstAtLeast(sorted: readonly number[], value: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle] < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Value at an on-time; beyond the curve the last segment is extrapolated. */
export function valueAt({ onTimes, values }: CostCurve, onTime: number): number {
  if (onTimes.length === 0) return 0;
  const upper = Math.min(firstAtLeast(onTimes, onTime), onTimes.length - 1);
  if (upper === 0) return values[0];
  const [from, base] = [onTimes[upper - 1], values[upper - 1]];
  return base + ((onTime - from) / (onTimes[upper] - from)) * (values[upper] - base);
}

/** The longest on-time whose value is not above a given one; 0 if even the first is above it, Infinity if none is. */
export function longestWithin({ onTimes, values }: CostCurve, limit: number): number {
  const upper = values.findIndex((value) => value > limit);
  if (upper < 0) return Number.POSITIVE_INFINITY;
  if (upper === 0) return 0;
  const [from, base] = [onTimes[upper - 1], values[upper - 1]];
  return from + ((limit - base) / (values[upper] - base)) * (onTimes[upper] - from);
}

const NAMES: readonly CostName[] = [
  "energy",
  "switchHeat",
  "junctionRise",
  "bankHeat",
  "lasts",
  "sag",
  "mainsTime",
  "busTime",
  "bankTime",
];

function raised(cost: BurstCost, floor: BurstCost): BurstCost {
  const higher = { ...cost };
  for (const name of NAMES) higher[name] = Math.max(cost[name], floor[name]);
  return higher;
}

/** Each load as the largest of all shorter bursts, so that if one on-time is allowed, all shorter ones are. */
export function neverFalling(costs: readonly BurstCost[]): BurstCost[] {
  const risen: BurstCost[] = [];
  for (const cost of costs) risen.push(raised(cost, risen.at(-1) ?? cost));
  return risen;
}
