/** The load of bursts by on-time, and the limits of a coil's parts. */
import type { BurstCase } from "../burst/burstCase";
import {
  type BurstPhases,
  burstPhases,
  largestOverPhases,
  simulateOnTime,
  withWorstTurnOff,
  worstTurnOff,
} from "../burst/burstPhases";
import { type BurstResult, meanFrequency } from "../burst/burstResult";
import { bankPeakCurrentRating, bankVoltageRating, dissipationResistance } from "../circuit/bank";
import { switchesInPath } from "../circuit/bridge";
import { noLoadBusVoltage } from "../circuit/rectifier";
import { busLag, powerAt, supplyPoints } from "../circuit/supplyPoints";
import { switchLosses } from "../circuit/switchLosses";
import type { DesignParts, FosterElement } from "../design-parts";
import { type BurstCost, costCurve, longestWithin, neverFalling } from "./burstCost";
import { type CoilLoad, meanWindow, type SupplyPoint } from "./coilLoad";

/** The parts of a design that determine the limits of its bursts. */
export type LoadParts = Pick<DesignParts, "tank" | "drive" | "interrupter" | "air">;

/** Share of each limit that is used; the rest covers the error between the table's on-times and powers. */
const USED_PART = 0.95;
/** Part of its no-load voltage that the bus may fall to; common practice, no source. */
const LEAST_BUS = 0.75;
/** s by which an on-time stays short of the moment when the current limit would end it. */
const SHORT_OF_LIMIT = 2e-9;

/**
 * One unit of the bank to still air: a case of about 50 cm² at 10 W/(m²K), natural convection and radiation together,
 * and 30 g at 1 J/(g·K). Source: an order of magnitude, no source, for any one capacitor.
 */
const BANK_THERMAL: FosterElement = { resistance: 20, timeConstant: 600 };

interface Allowed {
  /** W */
  mains: number;
  bus: number;
  /** A² of the whole bank */
  bank: number;
}

/** J from the reservoir. */
function energyOf(parts: LoadParts, phases: BurstPhases): number {
  const inPath = switchesInPath(parts.drive);
  const taken = largestOverPhases(phases, (burst) => {
    const { supplied, returned, turnOff } = burst.energy;
    return supplied - returned + turnOff + inPath * worstTurnOff(parts.drive, burst);
  });
  return Math.max(0, taken);
}

function cost(parts: LoadParts, phases: BurstPhases, allowed: Allowed): BurstCost {
  const { drive, tank, interrupter } = parts;
  const losses = phases.bursts.map((burst) => switchLosses(drive, withWorstTurnOff(drive, burst), 0));
  const energy = energyOf(parts, phases);
  const squareCurrentTime = largestOverPhases(phases, (burst) => burst.squareCurrentTime);
  const resistance = dissipationResistance(tank.unit, meanFrequency(phases.bursts[0]) ?? 0);
  const { onTime } = phases;
  return {
    onTime,
    energy,
    switchHeat: Math.max(
      ...losses.map(({ conductionEnergy, turnOffEnergy }) => conductionEnergy + turnOffEnergy),
    ),
    junctionRise: Math.max(...losses.map(({ rise }) => rise.firstBurst)),
    bankHeat: (squareCurrentTime / tank.strings ** 2) * resistance,
    lasts: Math.min(
      largestOverPhases(phases, ({ primaryEnd }) => primaryEnd),
      onTime + interrupter.shortestGap,
    ),
    sag: largestOverPhases(phases, ({ reservoirSag }) => reservoirSag),
    mainsTime: energy / allowed.mains,
    busTime: energy / allowed.bus,
    bankTime: squareCurrentTime / allowed.bank,
  };
}

function allowedBy(
  design: LoadParts,
  supply: readonly SupplyPoint[],
  leastBus: number,
  sag: number,
): Allowed {
  const { circuitCurrent } = design.drive.supply;
  const { unit, strings } = design.tank;
  return {
    mains: powerAt(supply, ({ mainsCurrent }) => mainsCurrent - USED_PART * circuitCurrent),
    bus: powerAt(supply, ({ busVoltage }) => leastBus + sag - busVoltage) * USED_PART,
    bank: (USED_PART * unit.rmsCurrent * strings) ** 2,
  };
}

type Ceiling = CoilLoad["ceilings"][number];

/** s at which a peak of the burst first reaches a limit. */
function peakCeiling(
  all: readonly BurstPhases[],
  peak: (burst: BurstResult) => number,
  limit: number,
): number {
  const onTimes = all.map(({ onTime }) => onTime);
  return longestWithin(
    { onTimes, values: all.map((phases) => largestOverPhases(phases, peak)) },
    USED_PART * limit,
  );
}

function peakCeilings({ tank }: LoadParts, all: readonly BurstPhases[]): Ceiling[] {
  const voltage = peakCeiling(all, ({ peakBankVoltage }) => peakBankVoltage, bankVoltageRating(tank));
  const current = peakCeiling(
    all,
    ({ peakPrimaryCurrent }) => peakPrimaryCurrent.value,
    bankPeakCurrentRating(tank),
  );
  return [
    { limiter: "bank voltage", onTime: voltage },
    { limiter: "bank peak current", onTime: current },
  ];
}

/** If the current limit ends the burst, a longer on-time has no effect; if it ends half cycles, the burst continues. */
function limitCeiling({ drive }: LoadParts, { limitReachedAt }: BurstResult): Ceiling[] {
  if (limitReachedAt === null || drive.overCurrentAction === "end half cycle") return [];
  return [{ limiter: "over-current limit", onTime: limitReachedAt - SHORT_OF_LIMIT }];
}

function loadOf(design: LoadParts, all: readonly BurstPhases[], ceilings: Ceiling[]): CoilLoad {
  const { interrupter, drive, air } = design;
  const noLoad = noLoadBusVoltage(drive.supply);
  const leastBusVoltage = LEAST_BUS * noLoad;
  const mostPower = all.reduce(
    (most, each) => Math.max(most, (energyOf(design, each) / each.onTime) * interrupter.dutyLimit),
    0,
  );
  const supply = supplyPoints(design, 1.5 * mostPower);
  const deepest = Math.max(...all.map((each) => largestOverPhases(each, ({ reservoirSag }) => reservoirSag)));
  const sag = Math.min(deepest, 0.5 * (noLoad - leastBusVoltage));
  const allowed = allowedBy(design, supply, leastBusVoltage, sag);
  const costs = neverFalling(all.map((each) => cost(design, each, allowed)));
  const sagCeiling = longestWithin(
    costCurve(costs, (each) => each.sag),
    sag,
  );
  return {
    costs,
    ceilings: [...ceilings, { limiter: "bus voltage", onTime: sagCeiling }],
    thermal: drive.switch.thermal,
    caseTemperature: drive.switch.caseTemperature,
    junctionLimit: drive.switch.junctionLimit,
    junctionAllowance: USED_PART * (drive.switch.junctionLimit - drive.switch.caseTemperature),
    airTemperature: air.temperature,
    bankThermal: BANK_THERMAL,
    supply,
    circuitCurrent: drive.supply.circuitCurrent,
    leastBusVoltage,
    busLag: busLag(design, supply),
    window: meanWindow(interrupter.dutyWindow),
  };
}

/**
 * The load of bursts at on-times up to the interrupter's longest, or to where the current limit ends the burst, at a
 * full bus. Accuracy: that of the burst, overestimated by about 5 %, because each on-time is assumed to end at its
 * worst phase; the error between the table's on-times is within the reserved share of each limit.
 * @returns null if the burst cannot be simulated
 */
export function loadOfBursts(parts: LoadParts, burstCase: BurstCase): CoilLoad | null {
  const longest = simulateOnTime(burstCase, parts.interrupter.longestOnTime);
  if (!longest) return null;
  const limit = limitCeiling(parts, longest);
  const last = Math.min(parts.interrupter.longestOnTime, ...limit.map(({ onTime }) => onTime));
  const halfCycle = 0.5 / (meanFrequency(longest) ?? 1 / last);
  const all = burstPhases(burstCase, last, halfCycle);
  return loadOf(parts, all, [...limit, ...peakCeilings(parts, all)]);
}
