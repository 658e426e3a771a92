/**
 * One burst in time: exact between the switchings, which are found and not rounded to a step.
 * Source: N. J. Higham, Functions of Matrices (2008), sec. 2.1 and 10.3, for the propagation.
 */
import { type BurstDrive, switchesInPath } from "./burstDrive";
import { closeHalfCycle, cubicPeak, gateOff, gateOn, recordInterval, takeSample } from "./burstRecord";
import { type BurstResult, burstResult } from "./burstResult";
import {
  type BurstOptions,
  type BurstRun,
  busVoltage,
  currentZero,
  growSpark,
  openLadder,
  presentLadder,
  settle,
  startingDirection,
  startRun,
  storeRail,
} from "./burstRun";
import { CURRENT, leakageInductance, secondaryEnergy } from "./burstSystem";
import { comparatorInput, nextTimer, passZero, reachLimit, switchAt } from "./commutation";
import { addInterval } from "./energyAccount";
import { ringDown, staysOpen } from "./freeDecay";
import type { Network } from "./network";
import { climb, RUNGS, transform } from "./stepLadder";

/** The account is closed when the modes hold less than this part of the most that they held. */
const RUNG_DOWN = 1e-3;
/** Steps of one burst: some hundred times what a usual one takes. */
const MOST_STEPS = 400_000;
/** Periods of the slowest sample that are still drawn after the last current. */
const DRAWN_AFTER = 96;

function watchesLimit({ control, drive }: BurstRun): boolean {
  return control.gate !== 0 && control.limitOffAt === Number.POSITIVE_INFINITY && drive.overCurrentLimit > 0;
}

function currentRate(run: BurstRun, x: Float64Array): number {
  if (run.direction === 0) return 0;
  const { size, entries } = run.conducting.system;
  let sum = 0;
  for (let column = 0; column < size; column++) sum += entries[CURRENT * size + column] * x[column];
  return sum;
}

function hasEnded(run: BurstRun, x: Float64Array): boolean {
  return run.direction !== 0 && run.direction * x[CURRENT] < 0;
}

function exceeds(run: BurstRun, x: Float64Array): boolean {
  return watchesLimit(run) && Math.abs(x[CURRENT]) >= run.drive.overCurrentLimit;
}

function hasPassed(run: BurstRun, x: Float64Array): boolean {
  const { control, drive } = run;
  return (
    control.awaiting && control.seen && comparatorInput(control, drive, x[CURRENT], currentRate(run, x)) <= 0
  );
}

/** Whether something has happened by a state that changes what comes after. */
function happened(run: BurstRun, x: Float64Array): boolean {
  if (run.direction === 0) return startingDirection(run, x) !== 0;
  return hasEnded(run, x) || exceeds(run, x) || hasPassed(run, x);
}

/** Advances by a time in rungs, stopping within the last rung before something happens. Gives the time passed. */
function approach(run: BurstRun, time: number, stopping: boolean): number {
  const ladder = presentLadder(run);
  const { x } = run.there;
  const { next } = run;
  x.set(run.here.x);
  let passed = 0;
  for (let rung = 0; rung < RUNGS; rung++) {
    const part = ladder.step / 2 ** rung;
    if (passed + part > time) continue;
    climb(ladder, rung, x, next);
    if (stopping && happened(run, next)) continue;
    x.set(next);
    passed += part;
  }
  return passed;
}

/** One last smallest rung, over the event. */
function passEvent(run: BurstRun): number {
  const ladder = presentLadder(run);
  climb(ladder, RUNGS - 1, run.there.x, run.next);
  run.there.x.set(run.next);
  return ladder.step / 2 ** (RUNGS - 1);
}

function advance(run: BurstRun, time: number): number {
  const ladder = presentLadder(run);
  if (time < ladder.step) return approach(run, time, false);
  climb(ladder, 0, run.here.x, run.there.x);
  return ladder.step;
}

function rateThere(run: BurstRun): void {
  const { system } = presentLadder(run);
  transform(system.size, system.entries, run.there.x, run.there.rate);
}

/** Time to a peak inside the step that passes the limit though neither end does; the whole step otherwise. */
function shortenedToPeak(run: BurstRun, time: number): number {
  if (!watchesLimit(run) || run.direction === 0) return time;
  const [a, b] = [run.here, run.there];
  if (a.rate[CURRENT] * b.rate[CURRENT] >= 0) return time;
  const peak = cubicPeak(a.x[CURRENT], b.x[CURRENT], a.rate[CURRENT], b.rate[CURRENT], time);
  return peak.value >= run.drive.overCurrentLimit ? peak.time : time;
}

/** Moves to there; the books are kept. */
function arrive(run: BurstRun, time: number): void {
  const { record, sums, losses, network } = run;
  recordInterval(record, run.time, time, run.here, run.there);
  addInterval(sums, losses, time, run.here, run.there, network.primary.capacitance, run.railResistance);
  [run.here, run.there] = [run.there, run.here];
  run.time += time;
  if (run.rung > 0) run.rung--;
  run.largestSecondaryEnergy = Math.max(run.largestSecondaryEnergy, secondaryEnergy(network, run.here.x));
  takeSample(record, run.time, run.here.x);
}

function endHalfCycle(run: BurstRun): void {
  const { record, sums, before } = run;
  record.halfCycle.squareCurrent = sums.squareCurrent - before.squareCurrent;
  record.halfCycle.charge = sums.charge - before.charge;
  run.before = { squareCurrent: sums.squareCurrent, charge: sums.charge };
  closeHalfCycle(record, run.time, !run.control.ended);
}

/** What follows from the state that was arrived at. */
function react(run: BurstRun): void {
  const { control, drive, here } = run;
  if (run.direction === 0) {
    settle(run);
    return;
  }
  if (exceeds(run, here.x)) reachLimit(control, drive, run.time);
  const zero = hasEnded(run, here.x);
  const nothingToSee = zero && control.awaiting && control.gate === 0;
  if (hasPassed(run, here.x) || nothingToSee) passZero(control, drive, run.time);
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
    record.halfCycle.turnOffEnergy += drive.turnOffEnergyPerVoltAmpere * current * busVoltage(run);
}

function switchGates(run: BurstRun): void {
  const { control, drive, record } = run;
  run.time = nextTimer(control, drive);
  storeRail(run);
  bookTurnOff(run);
  if (switchAt(control, drive, run.time) === "on") {
    growSpark(run);
    gateOn(record, run.time, control.half);
  }
  takeSample(record, run.time, run.here.x, true);
  settle(run);
}

function step(run: BurstRun): void {
  const ladder = presentLadder(run);
  const left = nextTimer(run.control, run.drive) - run.time;
  const resolution = ladder.step / 2 ** (RUNGS - 1);
  if (left <= resolution) {
    switchGates(run);
    return;
  }
  let time = advance(run, Math.min(left, ladder.step / 2 ** run.rung));
  rateThere(run);
  const whole = time;
  const shorter = shortenedToPeak(run, time);
  if (shorter < time) time = advance(run, Math.max(shorter, resolution));
  const event = happened(run, run.there.x);
  if (event) time = approach(run, time, true) + passEvent(run);
  if (time !== whole) rateThere(run);
  arrive(run, time);
  if (event) react(run);
  watchComparator(run);
}

/** Whether nothing more can flow in the primary. */
function isOver(run: BurstRun): boolean {
  const { control, direction, here, rails, drop, network } = run;
  return control.ended && direction === 0 && staysOpen(network, here.x, rails.down + drop, rails.up + drop);
}

function ringOut(run: BurstRun): void {
  const { network, losses, here, sums } = run;
  const floor = RUNG_DOWN * run.largestSecondaryEnergy;
  if (secondaryEnergy(network, here.x) <= floor) return;
  const decayed = ringDown(network, openLadder(run), losses, here.x, floor);
  sums.secondary += decayed.secondary;
  sums.spark += decayed.spark;
}

/**
 * Runs one burst from rest.
 * @param network primary.resistance without the switches, which come from the drive
 * @returns null where the couplings are impossible (a leakage inductance not above zero) or a value has no meaning
 */
export function simulateBurst(
  network: Network,
  drive: BurstDrive,
  options: BurstOptions = {},
): BurstResult | null {
  if (!(leakageInductance(network) > 0) || !(network.primary.capacitance > 0)) return null;
  const run = startRun(network, drive, options);
  if (run.control.gate !== 0) gateOn(run.record, 0, 1);
  run.record.halfCycle.driven = run.control.gate !== 0;
  settle(run);
  takeSample(run.record, 0, run.here.x);
  watchComparator(run);
  while (!isOver(run) && run.steps < MOST_STEPS) {
    step(run);
    run.steps++;
  }
  const [primaryEnd, cutShort] = [run.time, run.steps >= MOST_STEPS];
  const drawnTo = run.time + DRAWN_AFTER * run.record.samplePeriod;
  while (run.steps < MOST_STEPS && run.time < drawnTo && run.largestSecondaryEnergy > 0) {
    step(run);
    run.steps++;
  }
  endHalfCycle(run);
  ringOut(run);
  return burstResult(run, switchesInPath(drive), primaryEnd, cutShort);
}
