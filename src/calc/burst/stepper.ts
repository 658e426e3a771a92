/**
 * One burst in time: exact between the switchings, which are found and not rounded to a step.
 * Source: higham2008, sec. 2.1 and 10.3, for the propagation.
 */
import { switchesInPath } from "../circuit/bridge";
import type { Network } from "../circuit/network";
import type { BurstDrive } from "./burstDrive";
import { comparatorMargin, limitMargin, margin, moveToEvent, RESOLUTION, watchesLimit } from "./burstEvent";
import { type BurstResult, burstResult } from "./burstResult";
import {
  type BurstOptions,
  type BurstRun,
  busVoltage,
  currentZero,
  growSpark,
  longestStep,
  moveCharge,
  openLadder,
  presentLadder,
  railDriving,
  STEPS_PER_RUNG,
  settle,
  startRun,
} from "./burstRun";
import { comparatorInput, nextTimer, passZero, reachLimit, switchAt } from "./commutation";
import { addInterval, addPrimary } from "./energyAccount";
import { ringDown, staysOpen } from "./freeDecay";
import { closeHalfCycle, cubicPeak, gateOff, gateOn, recordInterval, takeSample } from "./record";
import { transform, travel } from "./stepLadder";
import { CURRENT, highestFrequency, leakageInductance, secondaryEnergy } from "./system";

/** The account is closed when the modes hold less than this part of the most that they held. */
const RUNG_DOWN = 1e-3;
/** Steps of one burst: ten to fifty times what a usual one takes, most of them when nothing conducts any more. */
const MOST_STEPS = 36_000;
/** Of them, those that the longest on-time is divided into; switchings and the ringing after it take the rest. */
const MOST_STEPS_DRIVEN = 16_000;
/** What finding an event costs, in steps: a bridge that hunts has thousands. */
const STEPS_PER_EVENT = 6;
/** Sample periods that the modes are still followed for after the last current: to draw them, for their peaks alone. */
const DRAWN_AFTER = 96;
const FOLLOWED_AFTER = 32;

/** Moves from here to there; the rate at the new place with it. */
function advance(run: BurstRun, time: number): void {
  const { here, there } = run;
  const ladder = presentLadder(run);
  travel(ladder, time, here.x, there.x, run.terms);
  transform(ladder.system.size, ladder.system.entries, there.x, there.rate);
}

/** Time to a peak inside the step that passes the limit though neither end does; the whole step otherwise. */
function shortenedToPeak(run: BurstRun, time: number): number {
  if (!watchesLimit(run) || run.direction === 0) return time;
  const [a, b] = [run.here, run.there];
  if (a.rate[CURRENT] * b.rate[CURRENT] >= 0) return time;
  const peak = cubicPeak(a.x[CURRENT], b.x[CURRENT], a.rate[CURRENT], b.rate[CURRENT], time);
  return peak.value >= run.drive.overCurrentLimit ? peak.time : time;
}

/** The primary's part of the books. */
function bookPrimary(run: BurstRun, time: number): void {
  const { record, sums, here, there } = run;
  const before = railDriving(run);
  const charge = moveCharge(run);
  const rail = 0.5 * (before + railDriving(run));
  addPrimary(sums, time, here, there, charge, rail, run.railResistance);
  record.bankVoltage = Math.max(record.bankVoltage, Math.abs(run.bank));
}

/** Moves to there; the books are kept. */
function arrive(run: BurstRun, time: number): void {
  const { record, sums, losses } = run;
  recordInterval(record, run.time, time, run.here, run.there);
  addInterval(sums, losses, time, run.here, run.there);
  if (run.direction !== 0) bookPrimary(run, time);
  [run.here, run.there] = [run.there, run.here];
  run.time += time;
  run.settling = Math.max(0, run.settling - 1);
  takeSample(record, run.time, run.here.x, run.bank);
}

function endHalfCycle(run: BurstRun): void {
  const { record, sums, before } = run;
  record.halfCycle.squareCurrent = sums.squareCurrent - before.squareCurrent;
  record.halfCycle.charge = sums.charge - before.charge;
  record.halfCycle.direction = run.direction || 1;
  run.before = { squareCurrent: sums.squareCurrent, charge: sums.charge };
  closeHalfCycle(record, run.time, !run.control.ended);
  run.largestSecondaryEnergy = Math.max(run.largestSecondaryEnergy, secondaryEnergy(run.network, run.here.x));
}

/** What follows from the state that was arrived at. */
function react(run: BurstRun): void {
  const { control, drive, here } = run;
  if (run.direction === 0) {
    settle(run);
    return;
  }
  if (limitMargin(run, here.x) <= 0) reachLimit(control, drive, run.time);
  const zero = run.direction * here.x[CURRENT] < 0;
  const nothingToSee = zero && control.awaiting && control.gate === 0;
  if (comparatorMargin(run, here.x) <= 0 || nothingToSee) passZero(control, drive, run.time);
  if (zero) {
    endHalfCycle(run);
    currentZero(run);
  }
}

function watchComparator({ control, drive, here }: BurstRun): void {
  if (!control.awaiting || control.seen) return;
  control.seen = comparatorInput(control, drive, here.x[CURRENT], here.rate[CURRENT]) > 0;
}

/** The pair that is on goes off: booked with the current that it carries then. */
function bookTurnOff(run: BurstRun): void {
  const { record, control, drive, here } = run;
  if (control.gate === 0) return;
  const current = control.gate * here.x[CURRENT];
  gateOff(record, run.time);
  record.turnOffs.push({ time: run.time, current });
  if (current > 0)
    record.halfCycle.turnOffEnergy +=
      drive.turnOffEnergyPerVoltAmpere * current * Math.max(0, busVoltage(run));
}

function switchGates(run: BurstRun): void {
  const { control, drive, record } = run;
  run.time = nextTimer(control, drive);
  bookTurnOff(run);
  if (switchAt(control, drive, run.time) === "on") {
    growSpark(run);
    gateOn(record, run.time, control.half);
  }
  takeSample(record, run.time, run.here.x, run.bank, true);
  settle(run);
}

function step(run: BurstRun): void {
  const longest = presentLadder(run).step;
  const shortest = longest * RESOLUTION;
  const left = nextTimer(run.control, run.drive) - run.time;
  if (left <= shortest) {
    switchGates(run);
    return;
  }
  let time = Math.min(left, longest / 2 ** Math.ceil(run.settling / STEPS_PER_RUNG));
  advance(run, time);
  const shorter = shortenedToPeak(run, time);
  if (shorter < time) {
    time = Math.max(shorter, shortest);
    advance(run, time);
  }
  const event = margin(run, run.there.x) < 0;
  if (event) {
    time = moveToEvent(run, time);
    run.steps += STEPS_PER_EVENT;
  }
  arrive(run, time);
  if (event) react(run);
  watchComparator(run);
}

/** Whether nothing more can flow in the primary. */
function isOver(run: BurstRun): boolean {
  const { control, direction, here, rails, bank, drop, network } = run;
  return (
    control.ended && direction === 0 && staysOpen(network, bank, here.x, rails.down + drop, rails.up + drop)
  );
}

function ringOut(run: BurstRun): void {
  const { network, losses, here, sums } = run;
  const floor = RUNG_DOWN * run.largestSecondaryEnergy;
  if (secondaryEnergy(network, here.x) <= floor) return;
  const decayed = ringDown(network, openLadder(run), losses, here.x, floor);
  sums.secondary += decayed.secondary;
  sums.spark += decayed.spark;
}

/** s, the longest on-time that a burst in the network can be followed over: some 300 of its cycles. */
export function longestOnTime(network: Network): number {
  return MOST_STEPS_DRIVEN * longestStep(network);
}

function hasMeaning(network: Network, drive: BurstDrive): boolean {
  const positive = [leakageInductance(network), network.primary.capacitance, drive.reservoirCapacitance];
  if (!positive.every((value) => value > 0) || !Number.isFinite(highestFrequency(network))) return false;
  return drive.onTime <= longestOnTime(network);
}

/**
 * Runs one burst from rest.
 * @param network primary.resistance without the switches, which come from the drive
 * @returns null where the couplings are impossible (a leakage inductance not above zero), a value has no meaning, or
 * the on-time is longer than {@link longestOnTime}
 */
export function simulateBurst(
  network: Network,
  drive: BurstDrive,
  options: BurstOptions = {},
): BurstResult | null {
  if (!hasMeaning(network, drive)) return null;
  const run = startRun(network, drive, options);
  if (run.control.gate !== 0) gateOn(run.record, 0, 1);
  run.record.halfCycle.driven = run.control.gate !== 0;
  settle(run);
  takeSample(run.record, 0, run.here.x, run.bank);
  watchComparator(run);
  while (!isOver(run) && run.steps < MOST_STEPS) {
    step(run);
    run.steps++;
  }
  const [primaryEnd, cutShort] = [run.time, run.steps >= MOST_STEPS];
  const { sampled, samplePeriod } = run.record;
  const until = run.time + (sampled ? DRAWN_AFTER : FOLLOWED_AFTER) * samplePeriod;
  while (run.steps < MOST_STEPS && run.time < until && run.largestSecondaryEnergy > 0) {
    step(run);
    run.steps++;
  }
  endHalfCycle(run);
  ringOut(run);
  return burstResult(run, switchesInPath(drive), primaryEnd, cutShort);
}
