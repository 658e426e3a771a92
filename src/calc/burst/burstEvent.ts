/** What ends a step of a burst, and when: the current's zero, its limit, the comparator's zero, a diode's turn-on. */
import { type BurstRun, downwardVoltage, presentLadder, upwardVoltage } from "./burstRun";
import { comparatorInput } from "./commutation";
import { climb, expand, lowestStep, sumSeries, transform } from "./stepLadder";
import { CURRENT } from "./system";

/** The part of the longest step to which an event's time is found: some femtoseconds. */
export const RESOLUTION = 2 ** -24;
/** Least part of the bracket that a guess by secant keeps from its ends: what is left shrinks to it. */
const FROM_ENDS = 0.01;

export function watchesLimit({ control, drive }: BurstRun): boolean {
  return control.gate !== 0 && control.limitOffAt === Number.POSITIVE_INFINITY && drive.overCurrentLimit > 0;
}

function currentRate(run: BurstRun, x: Float64Array): number {
  const { size, entries } = run.conducting.system;
  let sum = 0;
  for (let column = 0; column < size; column++) sum += entries[CURRENT * size + column] * x[column];
  return sum;
}

export function comparatorMargin(run: BurstRun, x: Float64Array): number {
  const { control, drive } = run;
  if (!control.awaiting || !control.seen) return Number.POSITIVE_INFINITY;
  return comparatorInput(control, drive, x[CURRENT], currentRate(run, x));
}

export function limitMargin(run: BurstRun, x: Float64Array): number {
  return watchesLimit(run) ? run.drive.overCurrentLimit - Math.abs(x[CURRENT]) : Number.POSITIVE_INFINITY;
}

/** How far a state is from changing what comes after; below 0 it has. */
export function margin(run: BurstRun, x: Float64Array): number {
  if (run.direction === 0) return -Math.max(upwardVoltage(run, x), downwardVoltage(run, x));
  return Math.min(run.direction * x[CURRENT], limitMargin(run, x), comparatorMargin(run, x));
}

/** Climbs from here as long as nothing happens, down to the lowest rung. Gives the time passed. */
function approach(run: BurstRun, time: number): number {
  const ladder = presentLadder(run);
  const { x } = run.there;
  x.set(run.here.x);
  let passed = 0;
  for (let rung = 0, part = ladder.step; rung < ladder.rungs.length; rung++, part /= 2) {
    if (passed + part > time) continue;
    climb(ladder, rung, x, run.next);
    if (margin(run, run.next) < 0) continue;
    x.set(run.next);
    passed += part;
  }
  return passed;
}

/** Leaves there just after the event: a root search on the series, by secants kept from the bracket's ends. */
function closeIn(run: BurstRun, span: number): number {
  const { system, step } = presentLadder(run);
  const { next, terms } = run;
  expand(system, span, run.there.x, terms);
  sumSeries(terms, 1, next);
  let [low, high] = [0, 1];
  let [before, after] = [margin(run, run.there.x), margin(run, next)];
  while ((high - low) * span > step * RESOLUTION && after < 0) {
    const secant = before / (before - after);
    const part = low + (high - low) * Math.min(Math.max(secant, FROM_ENDS), 1 - FROM_ENDS);
    sumSeries(terms, part, next);
    const between = margin(run, next);
    if (between < 0) [high, after] = [part, between];
    else [low, before] = [part, between];
  }
  sumSeries(terms, high, run.there.x);
  return high * span;
}

/** Shortens a step in which something happens to just after that. Gives its time. */
export function moveToEvent(run: BurstRun, time: number): number {
  const passed = approach(run, time);
  const ladder = presentLadder(run);
  const until = passed + closeIn(run, Math.min(lowestStep(ladder), time - passed));
  transform(ladder.system.size, ladder.system.entries, run.there.x, run.there.rate);
  return until;
}
