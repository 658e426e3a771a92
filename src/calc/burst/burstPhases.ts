/** A design's burst at many on-times, each at the phases in which it may end. */
import { noLoadBusVoltage } from "../circuit/rectifier";
import type { DesignParts } from "../design-parts";
import { type BurstCase, runBurst } from "./burstCase";
import type { BurstResult } from "./burstResult";

const ON_TIMES = 20;

/**
 * Bursts whose ends lie a third of a half cycle apart, the first at the on-time: the ringing, the returned energy and
 * the device that turns off depend on the phase in which a burst ends, and a note's on-time may end in any.
 */
export interface BurstPhases {
  onTime: number;
  bursts: BurstResult[];
}

const PHASES = 3;

/** The largest of a value over the phases. */
export function largestOverPhases({ bursts }: BurstPhases, value: (burst: BurstResult) => number): number {
  return Math.max(...bursts.map(value));
}

/** The burst with another on-time, s, without a waveform; null as with {@link runBurst}. */
export function simulateOnTime(burstCase: BurstCase, onTime: number): BurstResult | null {
  const drive = { ...burstCase.drive, onTime };
  return runBurst({ ...burstCase, drive, options: { ...burstCase.options, waveform: false } });
}

function simulatePhases(burstCase: BurstCase, onTime: number, halfCycle: number): BurstPhases {
  const step = halfCycle / PHASES;
  const bursts = Array.from({ length: PHASES }, (_, index) =>
    simulateOnTime(burstCase, onTime + index * step),
  );
  return { onTime, bursts: bursts.filter((burst) => burst !== null) };
}

/** The largest current about the end of the drive, A. */
function currentAtEnd({ halfCycles, driveEnd }: BurstResult): number {
  const last = halfCycles.filter(({ from }) => from < driveEnd).slice(-2);
  return last.reduce((most, { peakCurrent }) => Math.max(most, peakCurrent), 0);
}

/** J that the last turn-off would cost more at the largest current about it. */
export function worstTurnOff(drive: DesignParts["drive"], burst: BurstResult): number {
  const missed = currentAtEnd(burst) - Math.max(0, burst.turnOffs.at(-1)?.current ?? 0);
  const { turnOffEnergyPerAmpere, turnOffTestVoltage } = drive.switch;
  return Math.max(0, missed) * (turnOffEnergyPerAmpere / turnOffTestVoltage) * noLoadBusVoltage(drive.supply);
}

/** The last half cycle that is driven takes the worst turn-off. */
export function withWorstTurnOff(drive: DesignParts["drive"], burst: BurstResult): BurstResult {
  const last = burst.halfCycles.findLastIndex(({ from }) => from < burst.driveEnd);
  const extra = worstTurnOff(drive, burst);
  const halfCycles = burst.halfCycles.map((half, index) =>
    index === last ? { ...half, turnOffEnergy: half.turnOffEnergy + extra } : half,
  );
  return { ...burst, halfCycles };
}

/** The phases of on-times from one half cycle to the longest, closer together where they are short. */
export function burstPhases(burstCase: BurstCase, longest: number, halfCycle: number): BurstPhases[] {
  const shortest = Math.min(halfCycle, longest / ON_TIMES);
  return Array.from({ length: ON_TIMES }, (_, index) => {
    const part = (index / (ON_TIMES - 1)) ** 1.5;
    return simulatePhases(burstCase, shortest + part * (longest - shortest), halfCycle);
  });
}
