/** Where each joule of a burst goes. */

import type { Network } from "../circuit/network";
import { CURRENT, LEAST_SPARK_RESISTANCE, modeCurrent, TIP, topVoltage } from "./system";

/** J. supplied − returned = spark + primary + bank + switches + secondary + stored + imbalance. */
export interface EnergyAccount {
  /** out of the reservoir's terminals */
  supplied: number;
  /** back into them */
  returned: number;
  spark: number;
  /** the primary's conductor */
  primary: number;
  bank: number;
  /** conduction alone */
  switches: number;
  secondary: number;
  /** in coils and capacitances at the end less at the start, reservoir left out */
  stored: number;
  /** what the sum does not explain */
  imbalance: number;
  /** beside the sum: the switches' turn-off, which the network does not see */
  turnOff: number;
}

/** J that a burst takes out of the reservoir and does not give back, turn-off included; never below 0. */
export function energyTaken({ supplied, returned, turnOff }: EnergyAccount): number {
  return Math.max(0, supplied - returned + turnOff);
}

/** Integrals since the start. */
export interface Integrals {
  /** A²s */
  squareCurrent: number;
  /** A·s, of the current's magnitude */
  charge: number;
  supplied: number;
  returned: number;
  secondary: number;
  spark: number;
}

export function noIntegrals(): Integrals {
  return { squareCurrent: 0, charge: 0, supplied: 0, returned: 0, secondary: 0, spark: 0 };
}

/**
 * ∫a² over a time from a and its rate at both ends: the trapezium rule with its end correction,
 * T/2·(f₀ + f₁) + T²/12·(f₀' − f₁') with f = a². Source: abramowitzStegun, 25.4.4 with its
 * correction term (Euler–Maclaurin).
 */
function squareIntegral(time: number, a: number, b: number, aRate: number, bRate: number): number {
  return 0.5 * time * (a * a + b * b) + ((time * time) / 6) * (a * aRate - b * bRate);
}

/** A state and its rate. */
export interface Instant {
  x: Float64Array;
  rate: Float64Array;
}

export interface Losses {
  modeResistances: readonly number[];
  /** S of the spark's resistance; 0 without a spark */
  sparkConductance: number;
}

/** V across the spark's resistance, of a rate V/s: behind the capacitance of a series load, else the whole top voltage. */
function sparkVoltage(modes: number, x: Float64Array): number {
  return topVoltage(modes, x) - x[TIP];
}

export function lossesOf({ load, modes }: Network): Losses {
  const sparks = load !== null && load.capacitance > 0;
  return {
    modeResistances: modes.map(({ resistance }) => resistance),
    sparkConductance: sparks ? 1 / Math.max(load.resistance, LEAST_SPARK_RESISTANCE) : 0,
  };
}

/** Adds what a time in one conduction costs: nothing in it switches. */
export function addInterval(sums: Integrals, losses: Losses, time: number, from: Instant, to: Instant): void {
  const { modeResistances, sparkConductance } = losses;
  const modes = modeResistances.length;
  for (let mode = 0; mode < modes; mode++) {
    const at = modeCurrent(mode);
    const square = squareIntegral(time, from.x[at], to.x[at], from.rate[at], to.rate[at]);
    sums.secondary += modeResistances[mode] * square;
  }
  if (sparkConductance > 0) {
    const [a, b] = [sparkVoltage(modes, from.x), sparkVoltage(modes, to.x)];
    const [aRate, bRate] = [sparkVoltage(modes, from.rate), sparkVoltage(modes, to.rate)];
    sums.spark += sparkConductance * squareIntegral(time, a, b, aRate, bRate);
  }
}

/**
 * Adds what the primary's current costs in a time.
 * @param charge A·s that it has moved
 * @param rail V, mean over that charge, with the sign it drives the current with: it falls in proportion
 */
export function addPrimary(
  sums: Integrals,
  time: number,
  from: Instant,
  to: Instant,
  charge: number,
  rail: number,
  railResistance: number,
): void {
  const at = CURRENT;
  const square = squareIntegral(time, from.x[at], to.x[at], from.rate[at], to.rate[at]);
  const energy = rail * charge - railResistance * square;
  sums.squareCurrent += square;
  sums.charge += Math.abs(charge);
  if (energy > 0) sums.supplied += energy;
  else sums.returned -= energy;
}
