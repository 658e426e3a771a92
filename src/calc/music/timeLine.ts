/**
 * The load of a gate on its coil along the score: duty, power, mains current, bus and temperatures against time, in
 * equal steps. Duty and power are means over a window that ends with the step; the junction is followed from burst
 * to burst and shown at its highest within the step.
 */
import type { FosterElement } from "../design-parts";
import { burstDemands } from "./burstDemand";
import { type CoilLoad, meanWindow, type SupplyPoint } from "./coilLoad";
import type { Gate } from "./gate";
import { JunctionTrack } from "./junctionTrack";

export interface TimeLine {
  /** s, start of each step */
  time: number[];
  duty: number[];
  /** from the load of the bursts; null if that is unknown */
  load: LoadLine | null;
}

export interface LoadLine {
  /** W from the reservoir */
  power: number[];
  /** A RMS in a line of the mains */
  mainsCurrent: number[];
  /** V, minimum of the bus: under the mean power, less the deepest sag of a burst in the step */
  busVoltage: number[];
  /** K, highest within the step */
  junctionTemperature: number[];
  /** K, of one unit of the bank */
  bankTemperature: number[];
}

/** s */
const FINEST_STEP = 0.05;
const MOST_STEPS = 2400;

/** A whole part of the window, or a whole number of windows for long scores, so that means meet their limits. */
export function stepOf(duration: number, window: number): number {
  const least = Math.max(FINEST_STEP, duration / MOST_STEPS);
  const parts = Math.floor(window / least + 1e-9);
  return parts >= 1 ? window / parts : window * Math.ceil(least / window - 1e-9);
}

/** Sums of one step, of sag and junction the largest. */
interface StepSums {
  onTime: number[];
  energy: number[];
  bankHeat: number[];
  sag: number[];
  junction: number[];
}

function noSums(steps: number): StepSums {
  const zeros = () => new Array<number>(steps).fill(0);
  return { onTime: zeros(), energy: zeros(), bankHeat: zeros(), sag: zeros(), junction: zeros() };
}

function stepSums(gate: Gate, load: CoilLoad | null, step: number, steps: number): StepSums {
  const sums = noSums(steps);
  const junction = new JunctionTrack(load?.thermal ?? []);
  const demandAt = load && burstDemands(load);
  const stepNanoseconds = Math.round(step * 1e9);
  gate.starts.forEach((start, pulse) => {
    const time = start / 1e9;
    const index = Math.min(steps - 1, Math.floor(start / stepNanoseconds));
    sums.onTime[index] += gate.onTimes[pulse] / 1e9;
    if (!demandAt) return;
    const cost = demandAt(gate.onTimes[pulse]);
    sums.energy[index] += cost.energy;
    sums.bankHeat[index] += cost.bankHeat;
    sums.sag[index] = Math.max(sums.sag[index], cost.sag);
    sums.junction[index] = Math.max(sums.junction[index], junction.riseAt(time) + cost.junctionRise);
    junction.heat(cost.heat, time);
  });
  return sums;
}

/** Mean rates over as many steps as the window has, up to and with each. */
function trailingMean(sums: readonly number[], step: number, steps: number): number[] {
  let sum = 0;
  return sums.map((value, index) => {
    sum += value - (index >= steps ? sums[index - steps] : 0);
    return Math.max(0, sum) / (steps * step);
  });
}

/** Mains current and bus under a mean power, straight between the supply's points. */
export function supplyAt(supply: readonly SupplyPoint[], power: number): Omit<SupplyPoint, "power"> {
  const above = supply.findIndex((point) => point.power >= power);
  const upper = above < 0 ? supply.length - 1 : above;
  const [a, b] = [supply[Math.max(0, upper - 1)], supply[upper]];
  const part = b.power > a.power ? (power - a.power) / (b.power - a.power) : 1;
  return {
    mainsCurrent: a.mainsCurrent + part * (b.mainsCurrent - a.mainsCurrent),
    busVoltage: a.busVoltage + part * (b.busVoltage - a.busVoltage),
  };
}

/** Steps of a system of first order towards each target, from a start. */
function following(targets: readonly number[], start: number, lag: number, step: number): number[] {
  const kept = Math.exp(-step / lag);
  let value = start;
  return targets.map((target) => {
    value = target + (value - target) * kept;
    return value;
  });
}

/** K over the air of a unit that is heated by a mean power in each step. */
function warming(
  heats: readonly number[],
  { resistance, timeConstant }: FosterElement,
  step: number,
): number[] {
  const targets = heats.map((heat) => (resistance * heat) / step);
  return following(targets, 0, timeConstant, step);
}

function loadLine(sums: StepSums, load: CoilLoad, step: number, inWindow: number): LoadLine {
  const power = trailingMean(sums.energy, step, inWindow);
  const supplied = power.map((each) => supplyAt(load.supply, each));
  const buses = supplied.map(({ busVoltage }) => busVoltage);
  const bus = following(buses, load.supply[0].busVoltage, load.busLag, step);
  const bank = warming(sums.bankHeat, load.bankThermal, step);
  return {
    power,
    mainsCurrent: supplied.map(({ mainsCurrent }) => mainsCurrent),
    busVoltage: bus.map((voltage, index) => voltage - sums.sag[index]),
    junctionTemperature: sums.junction.map((rise) => load.caseTemperature + rise),
    bankTemperature: bank.map((rise) => load.airTemperature + rise),
  };
}

/**
 * The time line of one coil.
 * The mains current is that of the mean power, the bus follows it with a lag of first order: its capacitance times
 * the supply's inner resistance. Each burst is computed at the full bus, so power and heat are upper estimates.
 * @param duration s, of the score
 * @param load null if the load of the bursts is unknown
 * @param dutyWindow s
 */
export function timeLine(gate: Gate, duration: number, load: CoilLoad | null, dutyWindow: number): TimeLine {
  const window = load?.window ?? meanWindow(dutyWindow);
  const step = stepOf(duration, window);
  const steps = Math.max(1, Math.ceil(duration / step));
  const inWindow = Math.max(1, Math.round(window / step));
  const sums = stepSums(gate, load, step, steps);
  return {
    time: sums.onTime.map((_, index) => index * step),
    duty: trailingMean(sums.onTime, step, inWindow),
    load: load && loadLine(sums, load, step, inWindow),
  };
}
