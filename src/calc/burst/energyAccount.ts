/** The energy balance of a burst. */
import { switchesInPath } from "../circuit/bridge";
import type { BurstDrive } from "./burstDrive";
import type { Instant } from "./stepLadder";
import { CURRENT, type Losses, modeCurrent, sparkVoltage } from "./system";

/** Integrals since the start. */
export interface Integrals {
  /** A²s */
  squareCurrent: number;
  /** A·s, of the current's magnitude */
  charge: number;
  /** J out of the reservoir's terminals, and back into them */
  supplied: number;
  returned: number;
  /** J into the modes' resistances and the spark's */
  secondary: number;
  spark: number;
}

/** At the start. */
export function noIntegrals(): Integrals {
  return { squareCurrent: 0, charge: 0, supplied: 0, returned: 0, secondary: 0, spark: 0 };
}

/**
 * ∫a² over a time from a and its rate at both ends: the trapezium rule with its end correction,
 * T/2·(f₀ + f₁) + T²/12·(f₀' − f₁') with f = a². Source: abramowitzStegun, 25.4.4 with its correction term
 * (Euler–Maclaurin).
 */
function squareIntegral(time: number, a: number, b: number, aRate: number, bRate: number): number {
  return 0.5 * time * (a * a + b * b) + ((time * time) / 6) * (a * aRate - b * bRate);
}

/** Adds the losses other than the primary's over a time without switching. */
export function addLosses(
  integrals: Integrals,
  losses: Losses,
  time: number,
  from: Instant,
  to: Instant,
): void {
  const { modeResistances, sparkConductance } = losses;
  const modes = modeResistances.length;
  for (let mode = 0; mode < modes; mode++) {
    const at = modeCurrent(mode);
    const square = squareIntegral(time, from.x[at], to.x[at], from.rate[at], to.rate[at]);
    integrals.secondary += modeResistances[mode] * square;
  }
  if (sparkConductance > 0) {
    const [a, b] = [sparkVoltage(modes, from.x), sparkVoltage(modes, to.x)];
    const [aRate, bRate] = [sparkVoltage(modes, from.rate), sparkVoltage(modes, to.rate)];
    integrals.spark += sparkConductance * squareIntegral(time, a, b, aRate, bRate);
  }
}

/**
 * Adds the losses by the primary's current over a time.
 * @param charge A·s that it has moved
 * @param rail V, mean over that charge, with the sign it drives the current with: it falls in proportion
 */
export function addPrimary(
  integrals: Integrals,
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
  integrals.squareCurrent += square;
  integrals.charge += Math.abs(charge);
  if (energy > 0) integrals.supplied += energy;
  else integrals.returned -= energy;
}

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
  /** error of the balance */
  imbalance: number;
  /** not part of the balance: the switches' turn-off, which the network does not include */
  turnOff: number;
}

/** J that a burst takes out of the reservoir and does not return, including turn-off; never negative. */
export function energyTaken({ supplied, returned, turnOff }: EnergyAccount): number {
  return Math.max(0, supplied - returned + turnOff);
}

/** Ω of the primary, the switches left out. */
export interface PrimaryResistances {
  conductor: number;
  bank: number;
}

/**
 * The energy balance of a finished burst.
 * @param stored J in coils and capacitances, reservoir left out
 * @param turnOff J of one switch's turn-offs
 */
export function energyAccount(
  integrals: Integrals,
  drive: BurstDrive,
  resistances: PrimaryResistances,
  stored: number,
  turnOff: number,
): EnergyAccount {
  const { supplied, returned, spark, secondary, squareCurrent, charge } = integrals;
  const { onStateResistance, onStateVoltage } = drive;
  const inPath = switchesInPath(drive);
  const primary = resistances.conductor * squareCurrent;
  const bank = resistances.bank * squareCurrent;
  const switches = inPath * (onStateResistance * squareCurrent + onStateVoltage * charge);
  const used = spark + primary + bank + switches + secondary + stored;
  return {
    supplied,
    returned,
    spark,
    primary,
    bank,
    switches,
    secondary,
    stored,
    imbalance: supplied - returned - used,
    turnOff: inPath * turnOff,
  };
}
