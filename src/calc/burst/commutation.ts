/**
 * Control of the bridge: which pair of switches is on, and what is scheduled.
 *
 * The comparator sees i + leadTime·di/dt, a prediction of the current. Where that passes zero the pair is
 * turned off a delay later, and the opposite one turned on a dead time after that. At a fixed frequency the
 * pairs change at every half period. A half cycle begins with its pair's turn-on.
 */
import type { BurstDrive, Polarity } from "./burstDrive";

export interface Control {
  /** pair of the present half cycle: 1 drives the current up */
  half: Polarity;
  /** pair that is on; 0 while none is */
  gate: Polarity | 0;
  /** whether the comparator's zero crossing is awaited */
  awaiting: boolean;
  /** the comparator has had the sign of this half cycle, so that its next zero ends it */
  seen: boolean;
  /** s; Infinity if nothing is scheduled */
  offAt: number;
  onAt: number;
  limitOffAt: number;
  /** s when the over-current limit was first reached */
  limitReachedAt: number | null;
  /** no pair will be turned on again */
  ended: boolean;
}

/** The first pair is on at once, unless the on-time is 0. */
export function startControl(drive: BurstDrive): Control {
  const runs = drive.onTime > 0;
  const free = drive.commutation.mode === "primary current";
  return {
    half: 1,
    gate: runs ? 1 : 0,
    awaiting: runs && free,
    seen: false,
    offAt: runs && !free ? halfPeriod(drive) : Number.POSITIVE_INFINITY,
    onAt: Number.POSITIVE_INFINITY,
    limitOffAt: Number.POSITIVE_INFINITY,
    limitReachedAt: null,
    ended: !runs,
  };
}

/** s; Infinity for a frequency that is missing or not above zero: the first pair stays on. */
function halfPeriod({ commutation }: BurstDrive): number {
  return commutation.frequency && commutation.frequency > 0
    ? 0.5 / commutation.frequency
    : Number.POSITIVE_INFINITY;
}

/** What the comparator sees, positive while the half cycle lasts. */
export function comparatorInput(control: Control, drive: BurstDrive, current: number, rate: number): number {
  return control.half * (current + drive.commutation.leadTime * rate);
}

/** s, when a gate is next due to change; Infinity for never. */
export function nextTimer(control: Control, drive: BurstDrive): number {
  if (control.ended) return Number.POSITIVE_INFINITY;
  return Math.min(control.offAt, control.onAt, control.limitOffAt, drive.onTime);
}

/** The comparator has passed zero: schedules the change of pairs. */
export function passZero(control: Control, drive: BurstDrive, time: number): void {
  const { delay, deadTime } = drive.commutation;
  control.awaiting = false;
  control.offAt = time + delay;
  control.onAt = control.offAt + deadTime;
}

/** The current has reached the over-current limit: the pair turns off a delay later. */
export function reachLimit(control: Control, drive: BurstDrive, time: number): void {
  control.limitReachedAt ??= time;
  control.limitOffAt = time + drive.commutation.delay;
}

function allOff(control: Control): void {
  control.gate = 0;
  control.offAt = Number.POSITIVE_INFINITY;
  control.limitOffAt = Number.POSITIVE_INFINITY;
}

/** Turns all pairs off until the end. */
function endControl(control: Control): void {
  allOff(control);
  control.onAt = Number.POSITIVE_INFINITY;
  control.awaiting = false;
  control.ended = true;
}

/** Over-current: the pair off now; the burst ends, or the next half cycle begins as it would have. */
function turnOffAtLimit(control: Control, drive: BurstDrive): void {
  control.gate = 0;
  control.limitOffAt = Number.POSITIVE_INFINITY;
  if (drive.overCurrentAction === "end burst") endControl(control);
}

function turnOff(control: Control, drive: BurstDrive, time: number): void {
  allOff(control);
  if (drive.commutation.mode === "fixed frequency") control.onAt = time + drive.commutation.deadTime;
}

/** A dead time longer than a half period skips the half periods that it covers. */
function turnOn(control: Control, drive: BurstDrive, time: number): void {
  const half = halfPeriod(drive);
  const fixed = drive.commutation.mode === "fixed frequency";
  const passed = Math.round((time - drive.commutation.deadTime) / half);
  control.half = fixed ? (passed % 2 === 0 ? 1 : -1) : control.half === 1 ? -1 : 1;
  control.gate = control.half;
  control.onAt = Number.POSITIVE_INFINITY;
  control.awaiting = !fixed;
  control.seen = false;
  if (fixed) control.offAt = (Math.floor(time / half + 1e-9) + 1) * half;
}

export type Switching = "end" | "limit" | "off" | "on";

/** Performs the actions due at a time, in the order of the gates; returns them. */
export function switchAt(control: Control, drive: BurstDrive, time: number): Switching {
  if (time >= drive.onTime) {
    endControl(control);
    return "end";
  }
  if (time >= control.limitOffAt) {
    turnOffAtLimit(control, drive);
    return "limit";
  }
  if (time >= control.offAt) {
    turnOff(control, drive, time);
    return "off";
  }
  turnOn(control, drive, time);
  return "on";
}
