/** The record of a burst while it runs: peaks, half cycles, gates and a thinned waveform, besides the integrals. */
import type { Polarity } from "./burstDrive";
import { addLosses, type Integrals, noIntegrals } from "./energyAccount";
import type { Instant } from "./stepLadder";
import { CURRENT, type Losses, modeCurrent, topVoltage } from "./system";

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
  /** whether it began before the drive ended, so that not only the diodes conduct */
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
  /** A, positive if the switches carry it, negative if their diodes already do */
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

/** Since the start; the peaks of primary current and top voltage without the half cycle that is not over yet. */
interface Extremes {
  /** A */
  primaryCurrent: Peak;
  /** V */
  topVoltage: Peak;
  /** A at the base of the winding */
  baseCurrent: number;
  /** V across the bank */
  bankVoltage: number;
  /** V, the least of the whole bus */
  leastBusVoltage: number;
  /** J in modes and spark at a half cycle's end */
  secondaryEnergy: number;
}

interface Samples {
  /** whether a waveform is kept */
  kept: boolean;
  waveform: Waveform;
  /** s between samples, and when the next is due */
  period: number;
  next: number;
}

export interface BurstRecord {
  /** base current of each mode per ampere of its circuit current */
  baseCurrentRatios: Float64Array;
  extremes: Extremes;
  integrals: Integrals;
  /** integrals at the last half cycle's end */
  atHalfCycleStart: { squareCurrent: number; charge: number };
  halfCycle: HalfCycle;
  halfCycles: HalfCycle[];
  gates: GateInterval[];
  turnOffs: TurnOff[];
  samples: Samples;
}

export interface RecordOptions {
  /** base current of each mode per ampere of its circuit current; 1 where absent */
  baseCurrentRatios?: readonly number[];
  /** waveform samples per period of the fundamental */
  samplesPerPeriod?: number;
  /** false: no samples are taken, and the ringing after the last current is simulated for a period only */
  waveform?: boolean;
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

/**
 * An empty record.
 * @param period s, of the fundamental
 */
export function burstRecord(
  modes: number,
  period: number,
  busVoltage: number,
  options: RecordOptions,
): BurstRecord {
  const { baseCurrentRatios = [], samplesPerPeriod = 32, waveform = true } = options;
  return {
    baseCurrentRatios: Float64Array.from({ length: modes }, (_, mode) => baseCurrentRatios[mode] ?? 1),
    extremes: {
      primaryCurrent: { value: 0, time: 0 },
      topVoltage: { value: 0, time: 0 },
      baseCurrent: 0,
      bankVoltage: 0,
      leastBusVoltage: busVoltage,
      secondaryEnergy: 0,
    },
    integrals: noIntegrals(),
    atHalfCycleStart: { squareCurrent: 0, charge: 0 },
    halfCycle: emptyHalfCycle(0, true),
    halfCycles: [],
    gates: [],
    turnOffs: [],
    samples: {
      kept: waveform,
      waveform: { time: [], primaryCurrent: [], topVoltage: [], bankVoltage: [] },
      period: period / samplesPerPeriod,
      next: 0,
    },
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

function sampleInto(samples: Samples, modes: number, time: number, x: Float64Array, bank: number): void {
  const { waveform } = samples;
  waveform.time.push(time);
  waveform.primaryCurrent.push(x[CURRENT]);
  waveform.topVoltage.push(topVoltage(modes, x));
  waveform.bankVoltage.push(bank);
  samples.next = time + samples.period;
}

/** Takes a sample if one is due, or at once; never two at the same time. */
export function takeSample(
  { samples, baseCurrentRatios }: BurstRecord,
  time: number,
  x: Float64Array,
  bank: number,
  atOnce = false,
): void {
  if (!samples.kept || !(atOnce || time >= samples.next)) return;
  if (samples.waveform.time.at(-1) !== time) sampleInto(samples, baseCurrentRatios.length, time, x, bank);
}

function noteCurrent(halfCycle: HalfCycle, value: number, time: number): void {
  if (value <= halfCycle.peakCurrent) return;
  halfCycle.peakCurrent = value;
  halfCycle.peakTime = time;
}

function noteTop(halfCycle: HalfCycle, value: number, time: number): void {
  if (value <= halfCycle.peakTopVoltage) return;
  halfCycle.peakTopVoltage = value;
  halfCycle.topPeakTime = time;
}

function noteCurrentPeaks(half: HalfCycle, start: number, time: number, from: Instant, to: Instant): void {
  noteCurrent(half, Math.abs(to.x[CURRENT]), start + time);
  if (from.rate[CURRENT] * to.rate[CURRENT] >= 0) return;
  const peak = cubicPeak(from.x[CURRENT], to.x[CURRENT], from.rate[CURRENT], to.rate[CURRENT], time);
  noteCurrent(half, peak.value, start + peak.time);
}

function noteTopPeaks(
  half: HalfCycle,
  modes: number,
  start: number,
  time: number,
  from: Instant,
  to: Instant,
): void {
  const top = topVoltage(modes, to.x);
  noteTop(half, Math.abs(top), start + time);
  const [rate, rateBefore] = [topVoltage(modes, to.rate), topVoltage(modes, from.rate)];
  if (rateBefore * rate >= 0) return;
  const peak = cubicPeak(topVoltage(modes, from.x), top, rateBefore, rate, time);
  noteTop(half, peak.value, start + peak.time);
}

function baseCurrent(ratios: Float64Array, x: Float64Array): number {
  let sum = 0;
  for (let mode = 0; mode < ratios.length; mode++) sum += ratios[mode] * x[modeCurrent(mode)];
  return sum;
}

function noteBasePeaks(
  extremes: Extremes,
  ratios: Float64Array,
  time: number,
  from: Instant,
  to: Instant,
): void {
  const base = baseCurrent(ratios, to.x);
  extremes.baseCurrent = Math.max(extremes.baseCurrent, Math.abs(base));
  const [rate, rateBefore] = [baseCurrent(ratios, to.rate), baseCurrent(ratios, from.rate)];
  if (rateBefore * rate >= 0) return;
  const peak = cubicPeak(baseCurrent(ratios, from.x), base, rateBefore, rate, time);
  extremes.baseCurrent = Math.max(extremes.baseCurrent, peak.value);
}

/**
 * Peaks at the end of a time in one conduction, and within it where a slope changes its sign; what the time costs
 * beside the primary.
 */
export function recordInterval(
  record: BurstRecord,
  losses: Losses,
  start: number,
  time: number,
  from: Instant,
  to: Instant,
): void {
  const { halfCycle, baseCurrentRatios, extremes, integrals } = record;
  noteCurrentPeaks(halfCycle, start, time, from, to);
  noteTopPeaks(halfCycle, baseCurrentRatios.length, start, time, from, to);
  noteBasePeaks(extremes, baseCurrentRatios, time, from, to);
  addLosses(integrals, losses, time, from, to);
}

/** Of the burst so far, the half cycle that is not over yet with it. */
export function highestTopVoltage({ extremes, halfCycle }: BurstRecord): Peak {
  const { peakTopVoltage, topPeakTime } = halfCycle;
  const highest = extremes.topVoltage;
  return peakTopVoltage > highest.value ? { value: peakTopVoltage, time: topPeakTime } : highest;
}

/**
 * Ends a half cycle and begins the next.
 * @param direction that its current had
 * @param drivenNext whether the drive has not ended
 */
export function closeHalfCycle(
  record: BurstRecord,
  time: number,
  direction: Polarity,
  drivenNext: boolean,
): void {
  const { halfCycle: ended, extremes, integrals, atHalfCycleStart } = record;
  ended.to = time;
  ended.direction = direction;
  ended.squareCurrent = integrals.squareCurrent - atHalfCycleStart.squareCurrent;
  ended.charge = integrals.charge - atHalfCycleStart.charge;
  record.atHalfCycleStart = { squareCurrent: integrals.squareCurrent, charge: integrals.charge };
  if (ended.peakCurrent > extremes.primaryCurrent.value)
    extremes.primaryCurrent = { value: ended.peakCurrent, time: ended.peakTime };
  extremes.topVoltage = highestTopVoltage(record);
  if (ended.peakCurrent > 0 && ended.to > ended.from) record.halfCycles.push(ended);
  record.halfCycle = emptyHalfCycle(time, drivenNext);
}

/** A pair turns on. */
export function gateOn({ gates }: BurstRecord, time: number, polarity: Polarity): void {
  gates.push({ from: time, to: time, polarity });
}

/**
 * The pair that is on turns off.
 * @param current A that it carries then, below zero where its diodes do
 */
export function gateOff({ gates, turnOffs }: BurstRecord, time: number, current: number): void {
  const last = gates.at(-1);
  if (last) last.to = time;
  turnOffs.push({ time, current });
}
