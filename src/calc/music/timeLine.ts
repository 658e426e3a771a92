/**
 * What a gate does to its coil along the score: duty, power and temperatures against time, in equal
 * steps. Within a step the mean power counts; the rise inside a single burst is added on top.
 */
import type { FosterElement } from "../design-parts";
import type { Gate } from "./gate";

/** What one burst costs, by its on-time; from the design's own burst model. */
export interface BurstCost {
  /** s */
  onTime: number;
  /** J taken from the reservoir */
  energy: number;
  /** J of heat in the hardest worked device */
  switchHeat: number;
  /** K, rise of its junction inside the burst */
  junctionRise: number;
  /** J of heat in one unit of the bank */
  bankHeat: number;
}

export interface TimeLineSettings {
  /** on-times rising; between two a straight line, below the first proportional */
  costs: readonly BurstCost[];
  /** junction to case, of the hardest worked device */
  thermal: readonly FosterElement[];
  /** K */
  caseTemperature: number;
  /** K/W and s of one unit of the bank, to the air */
  bank: FosterElement;
  /** K */
  airTemperature: number;
  /** s */
  step: number;
}

export interface TimeLine {
  /** s, start of each step */
  time: number[];
  duty: number[];
  /** W from the reservoir */
  power: number[];
  /** K, highest within the step */
  junctionTemperature: number[];
  /** K */
  bankTemperature: number[];
}

type Cost = Omit<BurstCost, "onTime">;

const NO_COST: Cost = { energy: 0, switchHeat: 0, junctionRise: 0, bankHeat: 0 };

function between(a: BurstCost, b: BurstCost, part: number): Cost {
  const mix = (from: number, to: number): number => from + part * (to - from);
  return {
    energy: mix(a.energy, b.energy),
    switchHeat: mix(a.switchHeat, b.switchHeat),
    junctionRise: mix(a.junctionRise, b.junctionRise),
    bankHeat: mix(a.bankHeat, b.bankHeat),
  };
}

/** Cost of a burst of any on-time; beyond the table the last line goes on. */
export function burstCost(costs: readonly BurstCost[], onTime: number): Cost {
  if (costs.length === 0) return NO_COST;
  const above = costs.findIndex((cost) => cost.onTime >= onTime);
  const upper = above < 0 ? costs.length - 1 : above;
  const origin: BurstCost = { onTime: 0, ...NO_COST };
  const from = upper === 0 ? origin : costs[upper - 1];
  const to = costs[upper];
  return between(from, to, (onTime - from.onTime) / (to.onTime - from.onTime));
}

/** Temperature rises of a Foster network's elements after a step at constant power. */
function stepFoster(rises: number[], network: readonly FosterElement[], power: number, step: number): void {
  network.forEach(({ resistance, timeConstant }, index) => {
    const decay = Math.exp(-step / timeConstant);
    rises[index] = rises[index] * decay + power * resistance * (1 - decay);
  });
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

interface StepLoad extends Cost {
  onTime: number;
}

/** Loads of each step: totals of its bursts, of the rise the largest. */
function stepLoads(gate: Gate, settings: TimeLineSettings, steps: number): StepLoad[] {
  const stepNanoseconds = Math.round(settings.step * 1e9);
  const loads = Array.from({ length: steps }, (): StepLoad => ({ onTime: 0, ...NO_COST }));
  gate.starts.forEach((start, index) => {
    const load = loads[Math.min(steps - 1, Math.floor(start / stepNanoseconds))];
    const onTime = gate.onTimes[index] / 1e9;
    const cost = burstCost(settings.costs, onTime);
    load.onTime += onTime;
    load.energy += cost.energy;
    load.switchHeat += cost.switchHeat;
    load.bankHeat += cost.bankHeat;
    load.junctionRise = Math.max(load.junctionRise, cost.junctionRise);
  });
  return loads;
}

/**
 * The time line of one coil.
 * @param duration s, of the score
 */
export function timeLine(gate: Gate, duration: number, settings: TimeLineSettings): TimeLine {
  const { step, thermal, bank, caseTemperature, airTemperature } = settings;
  const steps = Math.max(1, Math.ceil(duration / step));
  const line: TimeLine = { time: [], duty: [], power: [], junctionTemperature: [], bankTemperature: [] };
  const junction = thermal.map(() => 0);
  const bankRise = [0];
  stepLoads(gate, settings, steps).forEach((load, index) => {
    stepFoster(junction, thermal, load.switchHeat / step, step);
    stepFoster(bankRise, [bank], load.bankHeat / step, step);
    line.time.push(index * step);
    line.duty.push(load.onTime / step);
    line.power.push(load.energy / step);
    line.junctionTemperature.push(caseTemperature + sum(junction) + load.junctionRise);
    line.bankTemperature.push(airTemperature + bankRise[0]);
  });
  return line;
}
