/**
 * One burst in time: exact between the switchings, which are found and not rounded to a step.
 * Source: higham2008, sec. 2.1 and 10.3, for the propagation.
 */
import type { Network, SparkLoad } from "../circuit/network";
import {
  type BurstDrive,
  busVoltage,
  conduct,
  conductingPath,
  moveCharge,
  type PrimarySide,
  primarySideAtRest,
  railDriving,
  startingDirection,
  startingVoltage,
} from "./burstDrive";
import { type BurstResult, burstResult } from "./burstResult";
import {
  type Control,
  comparatorInput,
  nextTimer,
  passZero,
  reachLimit,
  startControl,
  switchAt,
} from "./commutation";
import { addPrimary } from "./energyAccount";
import { ringDown, staysOpen } from "./freeDecay";
import {
  type BurstRecord,
  burstRecord,
  closeHalfCycle,
  cubicPeak,
  gateOff,
  gateOn,
  type RecordOptions,
  recordInterval,
  takeSample,
} from "./record";
import { type GrowingSpark, growingSpark, nextLoad, renewLoad, type SparkGrowth } from "./sparkGrowth";
import {
  advance,
  moveToEvent,
  type Place,
  placeAtRest,
  RESOLUTION,
  renewRate,
  type StepLadder,
} from "./stepLadder";
import {
  type BurstSystem,
  burstSystem,
  CURRENT,
  currentRate,
  highestFrequency,
  inducedVoltage,
  LEAST_SPARK_RESISTANCE,
  leakageInductance,
  longestStep,
  openLadder,
  SOURCE,
  secondaryEnergy,
  stateSize,
  storedEnergy,
} from "./system";

export interface BurstOptions extends RecordOptions {
  /** Ω, the part of the network's primary resistance that is the bank's; 0 where absent */
  bankResistance?: number;
  /** absent: the network's load is connected from the start */
  growth?: SparkGrowth;
}

/** A burst as it runs. */
interface BurstRun {
  drive: BurstDrive;
  /** with the spark's load of the moment */
  system: BurstSystem;
  /** null if the load stays */
  spark: GrowingSpark | null;
  place: Place;
  side: PrimarySide;
  control: Control;
  record: BurstRecord;
  /** s */
  time: number;
  /** steps so far; slower operations count as several */
  steps: number;
  /** steps in which a updated load still settles, each STEPS_PER_RUNG of them twice as long as those before */
  settling: number;
}

/** The simulation ends when the modes hold less than this share of their largest energy. */
const DECAYED_PART = 1e-3;
/** Steps of one burst: ten to fifty times what a usual one takes, most of them when nothing conducts any more. */
const MOST_STEPS = 36_000;
/** Of them, those that the longest on-time is divided into; switchings and the ringing after it take the rest. */
const MOST_STEPS_DRIVEN = 16_000;
/** What finding an event costs, in steps: a bridge that hunts has thousands. */
const STEPS_PER_EVENT = 6;
/** What a updated load's ladders cost, in steps. */
const STEPS_PER_RENEWAL = 10;
/** Two of a length keep the integrals of an exponential settling to 1e-3 of it. */
const STEPS_PER_RUNG = 2;
/** Sample periods that the modes are still followed for after the last current: to draw them, for their peaks alone. */
const DRAWN_AFTER = 96;
const FOLLOWED_AFTER = 32;

/** At rest; a growing spark has not begun. */
function startRun(full: Network, drive: BurstDrive, options: BurstOptions): BurstRun {
  const network = options.growth ? { ...full, load: null } : full;
  const { inductance, capacitance } = network.modes[0] ?? network.primary;
  const period = 2 * Math.PI * Math.sqrt(inductance * capacitance);
  return {
    drive,
    system: burstSystem(network, conductingPath(drive), longestStep(network)),
    spark: growingSpark(options.growth, full.load),
    place: placeAtRest(stateSize(network)),
    side: primarySideAtRest(drive, network.primary.capacitance),
    control: startControl(drive),
    record: burstRecord(network.modes.length, period, drive.busVoltage, options),
    time: 0,
    steps: 0,
    settling: 0,
  };
}

function presentLadder({ side, system }: BurstRun): StepLadder {
  return side.direction === 0 ? openLadder(system) : system.conducting;
}

/** Determines the direction of the current after a switching or a zero. */
function settle(run: BurstRun): void {
  const { side, system, control, place } = run;
  const { x } = place.here;
  if (side.direction === 0)
    side.direction = startingDirection(side, control.gate, inducedVoltage(system.network, x));
  if (side.direction === 0) {
    x[CURRENT] = 0;
    x[SOURCE] = 0;
  } else x[SOURCE] = conduct(side, side.direction, control.gate);
  renewRate(presentLadder(run), place.here);
}

function watchesLimit({ control, drive }: BurstRun): boolean {
  return control.gate !== 0 && control.limitOffAt === Number.POSITIVE_INFINITY && drive.overCurrentLimit > 0;
}

function limitMargin(run: BurstRun, x: Float64Array): number {
  return watchesLimit(run) ? run.drive.overCurrentLimit - Math.abs(x[CURRENT]) : Number.POSITIVE_INFINITY;
}

function comparatorMargin({ control, drive, system }: BurstRun, x: Float64Array): number {
  if (!control.awaiting || !control.seen) return Number.POSITIVE_INFINITY;
  return comparatorInput(control, drive, x[CURRENT], currentRate(system, x));
}

/**
 * How far a state is from changing what comes after; below 0 it has: a diode's turn-on, or the current's zero, its
 * limit, the comparator's zero.
 */
function margin(run: BurstRun, x: Float64Array): number {
  const { side, control, system } = run;
  if (side.direction === 0) return -startingVoltage(side, control.gate, inducedVoltage(system.network, x));
  return Math.min(side.direction * x[CURRENT], limitMargin(run, x), comparatorMargin(run, x));
}

/** Time to a peak inside the step that passes the limit though neither end does; the whole step otherwise. */
function shortenedToPeak(run: BurstRun, time: number): number {
  if (!watchesLimit(run) || run.side.direction === 0) return time;
  const { here, there } = run.place;
  if (here.rate[CURRENT] * there.rate[CURRENT] >= 0) return time;
  const peak = cubicPeak(here.x[CURRENT], there.x[CURRENT], here.rate[CURRENT], there.rate[CURRENT], time);
  return peak.value >= run.drive.overCurrentLimit ? peak.time : time;
}

/** The primary's part of the record. */
function recordPrimary({ side, record, place }: BurstRun, time: number): void {
  const { here, there } = place;
  const { extremes } = record;
  const before = railDriving(side);
  const charge = moveCharge(side, here.x[SOURCE] - there.x[SOURCE]);
  const rail = 0.5 * (before + railDriving(side));
  addPrimary(record.integrals, time, here, there, charge, rail, side.railResistance);
  extremes.leastBusVoltage = Math.min(extremes.leastBusVoltage, busVoltage(side));
  extremes.bankVoltage = Math.max(extremes.bankVoltage, Math.abs(side.bank));
}

/** Moves to there, and records the way. */
function arrive(run: BurstRun, time: number): void {
  const { record, system, place, side } = run;
  recordInterval(record, system.losses, run.time, time, place.here, place.there);
  if (side.direction !== 0) recordPrimary(run, time);
  [place.here, place.there] = [place.there, place.here];
  run.time += time;
  run.settling = Math.max(0, run.settling - 1);
  takeSample(record, run.time, place.here.x, side.bank);
}

function endHalfCycle({ record, side, control, system, place, time }: BurstRun): void {
  const { extremes } = record;
  closeHalfCycle(record, time, side.direction || 1, !control.ended);
  extremes.secondaryEnergy = Math.max(
    extremes.secondaryEnergy,
    secondaryEnergy(system.network, place.here.x),
  );
}

/** The current has reached zero: it continues in the other direction, or not at all. */
function turnOver(run: BurstRun): void {
  endHalfCycle(run);
  run.place.here.x[CURRENT] = 0;
  run.side.direction = 0;
  settle(run);
}

/** Handles the event at the state that was reached. */
function react(run: BurstRun): void {
  const { control, drive, side } = run;
  const { x } = run.place.here;
  if (side.direction === 0) {
    settle(run);
    return;
  }
  if (limitMargin(run, x) <= 0) reachLimit(control, drive, run.time);
  const zero = side.direction * x[CURRENT] < 0;
  const nothingToSee = zero && control.awaiting && control.gate === 0;
  if (comparatorMargin(run, x) <= 0 || nothingToSee) passZero(control, drive, run.time);
  if (zero) turnOver(run);
}

function watchComparator({ control, drive, place }: BurstRun): void {
  if (!control.awaiting || control.seen) return;
  const { x, rate } = place.here;
  control.seen = comparatorInput(control, drive, x[CURRENT], rate[CURRENT]) > 0;
}

/** The pair that is on turns off: recorded with the current that it carries then. */
function recordTurnOff({ record, control, drive, side, place, time }: BurstRun): void {
  if (control.gate === 0) return;
  const current = control.gate * place.here.x[CURRENT];
  gateOff(record, time, current);
  if (current > 0)
    record.halfCycle.turnOffEnergy +=
      drive.turnOffEnergyPerVoltAmpere * current * Math.max(0, busVoltage(side));
}

/** Steps in which a updated load is followed, from a quarter of the time it settles in up to the longest. */
function settlingSteps({ resistance, capacitance }: SparkLoad, step: number): number {
  const time = Math.max(resistance, LEAST_SPARK_RESISTANCE) * capacitance;
  return STEPS_PER_RUNG * Math.max(0, Math.ceil(Math.log2((4 * step) / time)));
}

/** Updates the spark's load for the half cycle that begins. */
function growSpark(run: BurstRun): void {
  const { spark, record, drive } = run;
  const { network, conducting } = run.system;
  const load = spark && nextLoad(spark, network.load, record, run.time);
  if (!load) return;
  const renewed = { ...network, load };
  record.integrals.spark += renewLoad(network, renewed, run.place.here.x);
  run.system = burstSystem(renewed, conductingPath(drive), conducting.step);
  run.settling = settlingSteps(load, conducting.step);
  run.steps += STEPS_PER_RENEWAL;
}

function switchGates(run: BurstRun): void {
  const { control, drive, record } = run;
  run.time = nextTimer(control, drive);
  recordTurnOff(run);
  if (switchAt(control, drive, run.time) === "on") {
    growSpark(run);
    gateOn(record, run.time, control.half);
  }
  takeSample(record, run.time, run.place.here.x, run.side.bank, true);
  settle(run);
}

/** Apart from the step, so that no closure is made where nothing happens. */
function shortenToEvent(run: BurstRun, ladder: StepLadder, time: number): number {
  run.steps += STEPS_PER_EVENT;
  return moveToEvent(ladder, run.place, time, (x) => margin(run, x));
}

function step(run: BurstRun): void {
  run.steps++;
  const { place, control, drive } = run;
  const ladder = presentLadder(run);
  const shortest = ladder.step * RESOLUTION;
  const left = nextTimer(control, drive) - run.time;
  if (left <= shortest) {
    switchGates(run);
    return;
  }
  let time = Math.min(left, ladder.step / 2 ** Math.ceil(run.settling / STEPS_PER_RUNG));
  advance(ladder, place, time);
  const shorter = shortenedToPeak(run, time);
  if (shorter < time) {
    time = Math.max(shorter, shortest);
    advance(ladder, place, time);
  }
  const event = margin(run, place.there.x) < 0;
  if (event) time = shortenToEvent(run, ladder, time);
  arrive(run, time);
  if (event) react(run);
  watchComparator(run);
}

/** Whether nothing more can flow in the primary. */
function isOver({ control, side, system, place }: BurstRun): boolean {
  const { direction, rails, bank, drop } = side;
  if (!control.ended || direction !== 0) return false;
  return staysOpen(system.network, bank, place.here.x, rails.down + drop, rails.up + drop);
}

/** Follows the modes a little further, to draw them or for their peaks. */
function followRinging(run: BurstRun): void {
  const { kept, period } = run.record.samples;
  const until = run.time + (kept ? DRAWN_AFTER : FOLLOWED_AFTER) * period;
  while (run.steps < MOST_STEPS && run.time < until && run.record.extremes.secondaryEnergy > 0) step(run);
}

/** The modes' energy goes into their losses and the spark. */
function ringOut({ system, place, record }: BurstRun): void {
  const { integrals, extremes } = record;
  const floor = DECAYED_PART * extremes.secondaryEnergy;
  if (secondaryEnergy(system.network, place.here.x) <= floor) return;
  const decayed = ringDown(system.network, openLadder(system), system.losses, place.here.x, floor);
  integrals.secondary += decayed.secondary;
  integrals.spark += decayed.spark;
}

/** s, the longest on-time of a burst that can be simulated in the network: about 300 of its cycles. */
export function longestOnTime(network: Network): number {
  return MOST_STEPS_DRIVEN * longestStep(network);
}

function hasMeaning(network: Network, drive: BurstDrive): boolean {
  const positive = [leakageInductance(network), network.primary.capacitance, drive.reservoirCapacitance];
  if (!positive.every((value) => value > 0) || !Number.isFinite(highestFrequency(network))) return false;
  return drive.onTime <= longestOnTime(network);
}

function begin(run: BurstRun): void {
  const { control, record } = run;
  if (control.gate !== 0) gateOn(record, 0, 1);
  record.halfCycle.driven = control.gate !== 0;
  settle(run);
  takeSample(record, 0, run.place.here.x, run.side.bank);
  watchComparator(run);
}

/**
 * Runs one burst from rest.
 * @param network primary.resistance without the switches, which come from the drive
 * @returns null if the couplings are impossible (a leakage inductance not above zero), a value has no meaning, or
 * the on-time is longer than {@link longestOnTime}
 */
export function simulateBurst(
  network: Network,
  drive: BurstDrive,
  options: BurstOptions = {},
): BurstResult | null {
  if (!hasMeaning(network, drive)) return null;
  const run = startRun(network, drive, options);
  begin(run);
  while (!isOver(run) && run.steps < MOST_STEPS) step(run);
  const [primaryEnd, cutShort] = [run.time, run.steps >= MOST_STEPS];
  followRinging(run);
  endHalfCycle(run);
  ringOut(run);
  const { resistance } = network.primary;
  const conductor = resistance - (options.bankResistance ?? 0);
  return burstResult(run.record, drive, {
    limitReachedAt: run.control.limitReachedAt,
    primaryEnd,
    cutShort,
    resistances: { conductor, bank: resistance - conductor },
    stored: storedEnergy(run.system.network, run.side.bank, run.place.here.x),
  });
}
