/** What is kept of a burst while it runs: peaks, half cycles, gates, a thinned waveform. */

import type { Polarity } from "./commutation";
import type { Instant } from "./energyAccount";
import { CURRENT, modeCurrent, topVoltage } from "./system";

export interface Peak {
  /** magnitude */
  value: number;
  /** s */
  time: number;
}

/** From one zero of the primary current to the next. */
export interface HalfCycle {
  /** s */
  from: number;
  to: number;
  /** A, magnitude */
  peakCurrent: number;
  /** s */
  peakTime: number;
  /** V, magnitude */
  peakTopVoltage: number;
  topPeakTime: number;
  /** of its current: 1 up */
  direction: Polarity;
  /** whether it began before the drive ended, so that it is not the diodes' alone */
  driven: boolean;
  /** A²s and A·s in it */
  squareCurrent: number;
  charge: number;
  /** J, one switch's turn-off in it */
  turnOffEnergy: number;
}

export interface GateInterval {
  /** s */
  from: number;
  to: number;
  /** pair that is on: 1 drives the current up */
  polarity: Polarity;
}

export interface TurnOff {
  /** s */
  time: number;
  /** A, above zero where the switches carry it, below where their diodes already do */
  current: number;
}

export interface Waveform {
  /** s */
  time: number[];
  /** A */
  primaryCurrent: number[];
  /** V */
  topVoltage: number[];
  /** V */
  bankVoltage: number[];
}

export interface BurstRecord {
  modes: number;
  baseCurrentRatios: Float64Array;
  primaryCurrent: Peak;
  topVoltage: Peak;
  baseCurrent: number;
  bankVoltage: number;
  halfCycle: HalfCycle;
  halfCycles: HalfCycle[];
  gates: GateInterval[];
  turnOffs: TurnOff[];
  /** whether a waveform is kept */
  sampled: boolean;
  waveform: Waveform;
  /** s between samples, and when the next is due */
  samplePeriod: number;
  nextSample: number;
}

function emptyHalfCycle(from: number, driven: boolean): HalfCycle {
  return {
    from,
    to: from,
    peakCurrent: 0,
    peakTime: from,
    peakTopVoltage: 0,
    topPeakTime: from,
    direction: 1,
    driven,
    squareCurrent: 0,
    charge: 0,
    turnOffEnergy: 0,
  };
}

export function burstRecord(
  modes: number,
  samplePeriod: number,
  baseCurrentRatios: readonly number[],
  sampled: boolean,
): BurstRecord {
  return {
    modes,
    baseCurrentRatios: Float64Array.from({ length: modes }, (_, mode) => baseCurrentRatios[mode] ?? 1),
    primaryCurrent: { value: 0, time: 0 },
    topVoltage: { value: 0, time: 0 },
    baseCurrent: 0,
    bankVoltage: 0,
    halfCycle: emptyHalfCycle(0, true),
    halfCycles: [],
    gates: [],
    turnOffs: [],
    sampled,
    waveform: { time: [], primaryCurrent: [], topVoltage: [], bankVoltage: [] },
    samplePeriod,
    nextSample: 0,
  };
}

/** Largest magnitude of the cubic through two values with their slopes, and where, as a part of the time. */
export function cubicPeak(a: number, b: number, aRate: number, bRate: number, time: number): Peak {
  const ends = Math.abs(a) >= Math.abs(b) ? { value: Math.abs(a), time: 0 } : { value: Math.abs(b), time };
  if (aRate * bRate >= 0) return ends;
  const [rise, m, n] = [b - a, aRate * time, bRate * time];
  const [third, second] = [m + n - 2 * rise, 3 * rise - 2 * m - n];
  const root = Math.sqrt(second * second - 3 * third * m);
  // of the two turning points, the one between the ends
  const part = m / (-second - Math.sign(second) * root) || 0;
  const other = (-second - Math.sign(second) * root) / (3 * third);
  const at = part > 0 && part < 1 ? part : other;
  if (!(at > 0 && at < 1)) return ends;
  const value = Math.abs(a + at * (m + at * (second + at * third)));
  return value > ends.value ? { value, time: at * time } : ends;
}

function sampleInto(record: BurstRecord, time: number, x: Float64Array, bank: number): void {
  const { waveform } = record;
  waveform.time.push(time);
  waveform.primaryCurrent.push(x[CURRENT]);
  waveform.topVoltage.push(topVoltage(record.modes, x));
  waveform.bankVoltage.push(bank);
  record.nextSample = time + record.samplePeriod;
}

/** Takes a sample where one is due, or at once; none twice at a time. */
export function takeSample(
  record: BurstRecord,
  time: number,
  x: Float64Array,
  bank: number,
  atOnce = false,
): void {
  if (!record.sampled || !(atOnce || time >= record.nextSample)) return;
  if (record.waveform.time.at(-1) !== time) sampleInto(record, time, x, bank);
}

function baseCurrent({ modes, baseCurrentRatios }: BurstRecord, x: Float64Array): number {
  let sum = 0;
  for (let mode = 0; mode < modes; mode++) sum += baseCurrentRatios[mode] * x[modeCurrent(mode)];
  return sum;
}

function noteCurrent({ halfCycle }: BurstRecord, value: number, time: number): void {
  if (value <= halfCycle.peakCurrent) return;
  halfCycle.peakCurrent = value;
  halfCycle.peakTime = time;
}

function noteTop({ halfCycle }: BurstRecord, value: number, time: number): void {
  if (value <= halfCycle.peakTopVoltage) return;
  halfCycle.peakTopVoltage = value;
  halfCycle.topPeakTime = time;
}

/** Peaks at the end of a time in one conduction, and within it where a slope changes its sign. */
export function recordInterval(
  record: BurstRecord,
  start: number,
  time: number,
  from: Instant,
  to: Instant,
): void {
  const { modes } = record;
  noteCurrent(record, Math.abs(to.x[CURRENT]), start + time);
  if (from.rate[CURRENT] * to.rate[CURRENT] < 0) {
    const { x, rate } = to;
    const peak = cubicPeak(from.x[CURRENT], x[CURRENT], from.rate[CURRENT], rate[CURRENT], time);
    noteCurrent(record, peak.value, start + peak.time);
  }
  const top = topVoltage(modes, to.x);
  noteTop(record, Math.abs(top), start + time);
  const [topRate, topRateBefore] = [topVoltage(modes, to.rate), topVoltage(modes, from.rate)];
  if (topRateBefore * topRate < 0) {
    const peak = cubicPeak(topVoltage(modes, from.x), top, topRateBefore, topRate, time);
    noteTop(record, peak.value, start + peak.time);
  }
  const base = baseCurrent(record, to.x);
  record.baseCurrent = Math.max(record.baseCurrent, Math.abs(base));
  const [baseRate, baseRateBefore] = [baseCurrent(record, to.rate), baseCurrent(record, from.rate)];
  if (baseRateBefore * baseRate < 0) {
    const peak = cubicPeak(baseCurrent(record, from.x), base, baseRateBefore, baseRate, time);
    record.baseCurrent = Math.max(record.baseCurrent, peak.value);
  }
}

/** Of the burst so far, the half cycle that is not over yet with it. */
export function highestTopVoltage({ topVoltage, halfCycle }: BurstRecord): Peak {
  const { peakTopVoltage, topPeakTime } = halfCycle;
  return peakTopVoltage > topVoltage.value ? { value: peakTopVoltage, time: topPeakTime } : topVoltage;
}

/** Ends a half cycle and begins the next. */
export function closeHalfCycle(record: BurstRecord, time: number, drivenNext: boolean): void {
  const ended = record.halfCycle;
  ended.to = time;
  if (ended.peakCurrent > record.primaryCurrent.value)
    record.primaryCurrent = { value: ended.peakCurrent, time: ended.peakTime };
  record.topVoltage = highestTopVoltage(record);
  if (ended.peakCurrent > 0 && ended.to > ended.from) record.halfCycles.push(ended);
  record.halfCycle = emptyHalfCycle(time, drivenNext);
}

export function gateOn(record: BurstRecord, time: number, polarity: Polarity): void {
  record.gates.push({ from: time, to: time, polarity });
}

export function gateOff(record: BurstRecord, time: number): void {
  const last = record.gates.at(-1);
  if (last) last.to = time;
}
