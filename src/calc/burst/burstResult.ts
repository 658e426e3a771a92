/** What a burst has to say for itself. */

import type { PolePair } from "../circuit/poles";
import type { BurstRun } from "./burstRun";
import type { EnergyAccount } from "./energyAccount";
import type { GateInterval, HalfCycle, Peak, TurnOff, Waveform } from "./record";
import { storedEnergy } from "./system";

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
  /** A at the foot of the winding */
  peakBaseCurrent: number;
  /** V across the bank */
  peakBankVoltage: number;
  /** A²s in the primary, from the start until its current has ended */
  squareCurrentTime: number;
  /** A·s, of its magnitude */
  chargeMoved: number;
  /** s; null where the over-current limit was not reached */
  limitReachedAt: number | null;
  /** s, when the last pair went off */
  driveEnd: number;
  /** s, when the primary current had ended for good */
  primaryEnd: number;
  /** V that the reservoir has fallen by at most, its series resistance left out */
  reservoirSag: number;
  halfCycles: HalfCycle[];
  runningFrequency: RunningFrequency[];
  /** of the primary current's envelope, its first minimum; null where it only rises */
  firstBeatMinimum: { time: number; current: number } | null;
  gates: GateInterval[];
  turnOffs: TurnOff[];
  waveform: Waveform;
  energy: EnergyAccount;
  /** the burst was cut short after very many steps; never in a usual network */
  cutShort: boolean;
}

/** A swing of the current one way, interrupted or not. */
type Swing = Pick<HalfCycle, "from" | "to" | "direction" | "driven" | "peakCurrent" | "peakTime">;

/** A current that stops and goes on in the same direction has not turned over: its half cycles are one swing. */
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

function account(run: BurstRun, inPath: number): EnergyAccount {
  const { sums, drive, network, here, record } = run;
  const { onStateResistance, onStateVoltage } = drive;
  const primary = run.conductorResistance * sums.squareCurrent;
  const bank = (network.primary.resistance - run.conductorResistance) * sums.squareCurrent;
  const switches = inPath * (onStateResistance * sums.squareCurrent + onStateVoltage * sums.charge);
  const stored = storedEnergy(network, run.bank, here.x);
  const used = sums.spark + primary + bank + switches + sums.secondary + stored;
  return {
    supplied: sums.supplied,
    returned: sums.returned,
    spark: sums.spark,
    primary,
    bank,
    switches,
    secondary: sums.secondary,
    stored,
    imbalance: sums.supplied - sums.returned - used,
    turnOff: inPath * record.halfCycles.reduce((sum, { turnOffEnergy }) => sum + turnOffEnergy, 0),
  };
}

export function burstResult(
  run: BurstRun,
  inPath: number,
  primaryEnd: number,
  cutShort: boolean,
): BurstResult {
  const { record, sums, control, drive } = run;
  return {
    peakPrimaryCurrent: record.primaryCurrent,
    peakTopVoltage: record.topVoltage,
    peakBaseCurrent: record.baseCurrent,
    peakBankVoltage: record.bankVoltage,
    squareCurrentTime: sums.squareCurrent,
    chargeMoved: sums.charge,
    limitReachedAt: control.limitReachedAt,
    driveEnd: record.gates.at(-1)?.to ?? 0,
    primaryEnd,
    reservoirSag: drive.busVoltage - run.lowestBus,
    halfCycles: record.halfCycles,
    runningFrequency: runningFrequency(record.halfCycles),
    firstBeatMinimum: firstBeatMinimum(record.halfCycles),
    gates: record.gates,
    turnOffs: record.turnOffs,
    waveform: record.waveform,
    energy: account(run, inPath),
    cutShort,
  };
}

/** Which of two poles a running frequency is nearer to, by ratio. */
export function runningPole(frequency: number, { lower, upper }: PolePair): "lower" | "upper" {
  return frequency * frequency < lower.frequency * upper.frequency ? "lower" : "upper";
}

/** Driven cycles over their time, Hz; null where there is not one. */
export function meanFrequency({ runningFrequency }: Pick<BurstResult, "runningFrequency">): number | null {
  const time = runningFrequency.reduce((sum, { frequency }) => sum + 1 / frequency, 0);
  return time > 0 ? runningFrequency.length / time : null;
}
