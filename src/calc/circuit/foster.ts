/** Junction temperature through a Foster network of thermal resistances and time constants. */
import type { FosterElement } from "../design-parts";

/** A time with a constant power, and an energy that comes all at once at its end. */
export interface HeatPulse {
  /** s */
  duration: number;
  /** W */
  power: number;
  /** J */
  energyAtEnd: number;
}

/** K/W for a steady power. */
export function thermalResistance(network: readonly FosterElement[]): number {
  return network.reduce((sum, { resistance }) => sum + resistance, 0);
}

/** K of each element after a pulse, exactly: each is a first-order system of its own. */
function afterPulse(network: readonly FosterElement[], rises: readonly number[], pulse: HeatPulse): number[] {
  return network.map(({ resistance, timeConstant }, index) => {
    const kept = Math.exp(-pulse.duration / timeConstant);
    const heated = resistance * pulse.power * (1 - kept);
    return rises[index] * kept + heated + (resistance / timeConstant) * pulse.energyAtEnd;
  });
}

function total(rises: readonly number[]): number {
  return rises.reduce((sum, rise) => sum + rise, 0);
}

function largestRise(network: readonly FosterElement[], start: number[], pulses: readonly HeatPulse[]) {
  let [rises, largest] = [start, total(start)];
  for (const pulse of pulses) {
    rises = afterPulse(network, rises, pulse);
    largest = Math.max(largest, total(rises));
  }
  return { rises, largest };
}

export interface JunctionRise {
  /** K over the case, at the worst moment of a repeated burst */
  peak: number;
  /** K over the case, mean */
  mean: number;
  /** K within one burst, from its start to its worst moment */
  withinBurst: number;
  /** K over the case at the worst moment of a first burst, all cold */
  firstBurst: number;
}

/**
 * Rise of a junction over its case when a train of pulses repeats for ever.
 * Each element at the start of a burst is what one burst leaves, over 1 − e^(−T/τ): a geometric series.
 * @param pulses of one burst, in order
 * @param period s from burst to burst, not below the pulses' own time
 */
export function repeatedRise(
  network: readonly FosterElement[],
  pulses: readonly HeatPulse[],
  period: number,
): JunctionRise {
  const burst = pulses.reduce((sum, { duration }) => sum + duration, 0);
  const energy = pulses.reduce(
    (sum, { power, duration, energyAtEnd }) => sum + power * duration + energyAtEnd,
    0,
  );
  const cold = network.map(() => 0);
  const first = largestRise(network, cold, pulses);
  const rest = Math.max(period - burst, 0);
  const start = network.map(({ timeConstant }, index) => {
    const left = first.rises[index] * Math.exp(-rest / timeConstant);
    return left / -Math.expm1(-(burst + rest) / timeConstant);
  });
  const { largest } = largestRise(network, start, pulses);
  return {
    peak: largest,
    mean: (thermalResistance(network) * energy) / (burst + rest),
    withinBurst: largest - total(start),
    firstBurst: first.largest,
  };
}
