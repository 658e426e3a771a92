/** The results of a burst, alone and repeated. */
import type { PolePair } from "../circuit/poles";
import type { BurstDrive } from "./burstDrive";
import { type EnergyAccount, energyAccount, type PrimaryResistances } from "./energyAccount";
import type { BurstRecord, GateInterval, HalfCycle, Peak, TurnOff, Waveform } from "./record";

export interface RunningFrequency {
  /** s, end of the cycle */
  time: number;
  /** Hz */
  frequency: number;
}

export interface BurstResult {
  /** A */
  peakPrimaryCurrent: Peak;
  /** V; may come after the drive has ended */
  peakTopVoltage: Peak;
  /** A at the base of the winding */
  peakBaseCurrent: number;
  /** V across the bank */
  peakBankVoltage: number;
  /** A²s in the primary, from the start until its current has ended */
  squareCurrentTime: number;
  /** A·s, of its magnitude */
  chargeMoved: number;
  /** s; null if the over-current limit was not reached */
  limitReachedAt: number | null;
  /** s, when the last pair turned off */
  driveEnd: number;
  /** s, when the primary current had ended finally */
  primaryEnd: number;
  /** V that the reservoir has fallen by at most, its series resistance left out */
  reservoirSag: number;
  halfCycles: HalfCycle[];
  runningFrequency: RunningFrequency[];
  /** of the primary current's envelope, its first minimum; null if it only rises */
  firstBeatMinimum: { time: number; current: number } | null;
  gates: GateInterval[];
  turnOffs: TurnOff[];
  waveform: Waveform;
  energy: EnergyAccount;
  /** the burst was cut off after too many steps; never in a usual network */
  cutShort: boolean;
}

/** A swing of the current one way, interrupted or not. */
type Swing = Pick<HalfCycle, "from" | "to" | "direction" | "driven" | "peakCurrent" | "peakTime">;

/** A current that stops and continues in the same direction has not reversed: its half cycles are one swing. */
function swings(halfCycles: readonly HalfCycle[]): Swing[] {
  const all: Swing[] = [];
  for (const half of halfCycles) {
    const last = all.at(-1);
    if (last?.direction === half.direction) {
      const { peakCurrent, peakTime } = half.peakCurrent > last.peakCurrent ? half : last;
      all[all.length - 1] = { ...last, to: half.to, driven: half.driven, peakCurrent, peakTime };
    } else all.push(half);
  }
  return all;
}

/** Hz of each cycle, a swing up and the one down after it. */
function runningFrequency(halfCycles: readonly HalfCycle[]): RunningFrequency[] {
  return swings(halfCycles).flatMap((later, index, all) => {
    const first = all[index - 1];
    if (index % 2 === 0 || !first || !later.driven) return [];
    return [{ time: later.to, frequency: 1 / (later.to - first.from) }];
  });
}

/** The first swing, once the envelope has risen, whose peak is below both neighbours'. */
function firstBeatMinimum(halfCycles: readonly HalfCycle[]): { time: number; current: number } | null {
  const driven = swings(halfCycles).filter((swing) => swing.driven);
  const risen = driven.findIndex(({ peakCurrent }, index) => peakCurrent < driven[index - 1]?.peakCurrent);
  if (risen < 2) return null;
  const at = driven.findIndex(
    ({ peakCurrent }, index) =>
      index >= risen &&
      index < driven.length - 1 &&
      peakCurrent < driven[index - 1].peakCurrent &&
      peakCurrent <= driven[index + 1].peakCurrent,
  );
  return at < 0 ? null : { time: driven[at].peakTime, current: driven[at].peakCurrent };
}

/** Results of a finished burst that are not in its record. */
interface BurstEnd {
  /** s; null if the over-current limit was not reached */
  limitReachedAt: number | null;
  /** s, when the primary current had ended finally */
  primaryEnd: number;
  cutShort: boolean;
  resistances: PrimaryResistances;
  /** J in coils and capacitances, reservoir left out */
  stored: number;
}

/** The result of a finished burst. */
export function burstResult(record: BurstRecord, drive: BurstDrive, end: BurstEnd): BurstResult {
  const { extremes, integrals, halfCycles, gates } = record;
  const turnOff = halfCycles.reduce((sum, { turnOffEnergy }) => sum + turnOffEnergy, 0);
  return {
    peakPrimaryCurrent: extremes.primaryCurrent,
    peakTopVoltage: extremes.topVoltage,
    peakBaseCurrent: extremes.baseCurrent,
    peakBankVoltage: extremes.bankVoltage,
    squareCurrentTime: integrals.squareCurrent,
    chargeMoved: integrals.charge,
    limitReachedAt: end.limitReachedAt,
    driveEnd: gates.at(-1)?.to ?? 0,
    primaryEnd: end.primaryEnd,
    reservoirSag: drive.busVoltage - extremes.leastBusVoltage,
    halfCycles,
    runningFrequency: runningFrequency(halfCycles),
    firstBeatMinimum: firstBeatMinimum(halfCycles),
    gates,
    turnOffs: record.turnOffs,
    waveform: record.samples.waveform,
    energy: energyAccount(integrals, drive, end.resistances, end.stored, turnOff),
    cutShort: end.cutShort,
  };
}

/** Which of two poles a running frequency is nearer to, by ratio. */
export function runningPole(frequency: number, { lower, upper }: PolePair): "lower" | "upper" {
  return frequency * frequency < lower.frequency * upper.frequency ? "lower" : "upper";
}

/** Driven cycles over their time, Hz; null if there is not one. */
export function meanFrequency({ runningFrequency }: Pick<BurstResult, "runningFrequency">): number | null {
  const time = runningFrequency.reduce((sum, { frequency }) => sum + 1 / frequency, 0);
  return time > 0 ? runningFrequency.length / time : null;
}

/** RMS over bursts and pauses from one burst's ∫i²dt, A. */
export function rmsOfBursts(squareCurrentTime: number, repetitionRate: number): number {
  return Math.sqrt(squareCurrentTime * repetitionRate);
}

/** W of an energy in J that each burst takes. */
export function averagePower(energy: number, repetitionRate: number): number {
  return energy * repetitionRate;
}

/** Share of the time that is on-time; on-times in s. */
export function dutyOf({ onTime, repetitionRate }: { onTime: number; repetitionRate: number }): number {
  return onTime * repetitionRate;
}
