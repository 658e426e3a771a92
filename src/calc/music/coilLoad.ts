import type { FosterElement } from "../design-parts";
import { type BurstCost, type CostCurve, costCurve } from "./burstCost";

/** What limits a note. */
export type Limiter =
  | "longest on-time"
  | "shortest gap"
  | "duty"
  | "over-current limit"
  | "bank voltage"
  | "bank peak current"
  | "bank current"
  | "mains current"
  | "bus voltage"
  | "junction";

/** The supply under a mean power. */
export interface SupplyPoint {
  /** W */
  power: number;
  /** A RMS in a line */
  mainsCurrent: number;
  /** V, minimum of the bus between two charging pulses */
  busVoltage: number;
}

/** The load of bursts on a coil's parts, and the limits of these; plain data, from the design's own models. */
export interface CoilLoad {
  /** on-times and loads rising; linear between entries, constant below the first */
  costs: BurstCost[];
  /** longest on-times that a single burst allows, at any rate */
  ceilings: { limiter: Limiter; onTime: number }[];
  /** junction to case, of the most heavily loaded device */
  thermal: FosterElement[];
  /** K */
  caseTemperature: number;
  junctionLimit: number;
  /** K over the case that bursts may use */
  junctionAllowance: number;
  airTemperature: number;
  /** one unit of the bank, to the air */
  bankThermal: FosterElement;
  /** powers rising from 0 */
  supply: SupplyPoint[];
  /** A that the mains circuit may carry */
  circuitCurrent: number;
  /** V that the bus may fall to */
  leastBusVoltage: number;
  /** s, with which the bus follows the power */
  busLag: number;
  /** s over which mains, bus and bank are judged by their mean: a whole number of the duty's windows */
  window: number;
}

/** Part of the mean limits that a burst uses up for how long, s: the worst of mains, bus and bank. */
export function meanTimeCurve({ costs }: CoilLoad): CostCurve {
  return costCurve(costs, ({ mainsTime, busTime, bankTime }) => Math.max(mainsTime, busTime, bankTime));
}

const LEAST_WINDOW = 0.25;

/**
 * The averaging time, s: at least a quarter of a second, some tens of the mains' charging
 * pulses and short against the heating of cables and capacitors.
 */
export function meanWindow(dutyWindow: number): number {
  return dutyWindow * Math.ceil(LEAST_WINDOW / dutyWindow);
}
