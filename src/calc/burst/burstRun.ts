/** The running state of a burst, and how the primary's current finds its way through the bridge. */
import { railCapacitance, railSeriesResistance, railVoltage, switchesInPath } from "../circuit/bridge";
import type { Network, SparkLoad } from "../circuit/network";
import type { BurstDrive } from "./burstDrive";
import { type Control, type Polarity, startControl } from "./commutation";
import { type Instant, type Integrals, type Losses, lossesOf, noIntegrals } from "./energyAccount";
import { type BurstRecord, burstRecord, highestTopVoltage } from "./record";
import { grownLoad, renewLoad, type SparkGrowth } from "./sparkGrowth";
import { type StepLadder, seriesRoom, stepLadder, transform } from "./stepLadder";
import {
  CURRENT,
  conductingSystem,
  highestFrequency,
  inducedVoltage,
  LEAST_SPARK_RESISTANCE,
  openSystem,
  SOURCE,
  stateSize,
} from "./system";

export interface BurstOptions {
  /** Ω, the part of the network's primary resistance that is the bank's; 0 where absent */
  bankResistance?: number;
  /** absent: the network's load stands from the start */
  growth?: SparkGrowth;
  /** base current of each mode per ampere of its circuit current; 1 where absent */
  baseCurrentRatios?: readonly number[];
  /** waveform samples per period of the fundamental */
  samplesPerPeriod?: number;
  /** false: no sample is taken, and the ringing after the last current is followed for a period only */
  waveform?: boolean;
}

export interface BurstRun {
  /** with the load of the moment */
  network: Network;
  /** with the full load */
  full: Network;
  growth: SparkGrowth | null;
  /** s, when the spark broke out */
  brokeOutAt: number;
  drive: BurstDrive;
  conducting: StepLadder;
  /** made when it is first needed after the load was renewed */
  open: StepLadder | null;
  losses: Losses;
  time: number;
  here: Instant;
  there: Instant;
  /** scratch: a state that is tried, Taylor's terms of one */
  next: Float64Array;
  terms: Float64Array[];
  /** Ω of the primary without the bank */
  conductorResistance: number;
  /** V across on-state switches at no current, Ω of reservoir in the path */
  drop: number;
  railResistance: number;
  /** direction of the primary current; 0 while none flows */
  direction: Polarity | 0;
  /** rail that the current comes from */
  rail: Polarity;
  /** V of the rails that drive the current up and down */
  rails: { up: number; down: number };
  /** V across the bank */
  bank: number;
  /** 1/F of bank and rail */
  elastance: { bank: number; rail: number };
  /** V, the least of the whole bus so far */
  lowestBus: number;
  control: Control;
  sums: Integrals;
  /** integrals at the last half cycle's end */
  before: { squareCurrent: number; charge: number };
  record: BurstRecord;
  /** steps in which a renewed load still settles, each STEPS_PER_RUNG of them twice as long as those before */
  settling: number;
  /** J, at a half cycle's end */
  largestSecondaryEnergy: number;
  steps: number;
}

/**
 * Steps per period of what primary and fundamental can ring at, and of the highest overtone, which carries little.
 * The integrals keep to some 1e-6, because the errors of the corrected trapezium rule cancel from step to step;
 * peaks between steps are read from cubics, to 3e-5 and 4e-4 of an overtone's share.
 */
const STEPS_PER_PERIOD = 20;
const STEPS_PER_OVERTONE = 10;

function pathOf(drive: BurstDrive) {
  return {
    resistance: switchesInPath(drive) * drive.onStateResistance + railSeriesResistance(drive),
    railCapacitance: railCapacitance(drive),
  };
}

function ladders(network: Network, drive: BurstDrive, step: number) {
  return {
    conducting: stepLadder(conductingSystem(network, pathOf(drive)), step),
    open: null,
    losses: lossesOf(network),
  };
}

/** s, what resolves the network's fastest ringing. */
export function longestStep(network: Network): number {
  const withoutOvertones = { ...network, modes: network.modes.slice(0, 1) };
  const fundamental = STEPS_PER_PERIOD * highestFrequency(withoutOvertones);
  return (2 * Math.PI) / Math.max(fundamental, STEPS_PER_OVERTONE * highestFrequency(network));
}

function instant(size: number): Instant {
  return { x: new Float64Array(size), rate: new Float64Array(size) };
}

export function startRun(full: Network, drive: BurstDrive, options: BurstOptions): BurstRun {
  const growth = options.growth ?? null;
  const network = growth ? { ...full, load: null } : full;
  const size = stateSize(network);
  const { inductance, capacitance } = network.modes[0] ?? network.primary;
  const period = 2 * Math.PI * Math.sqrt(inductance * capacitance);
  const rail = railVoltage(drive);
  return {
    network,
    full,
    growth,
    brokeOutAt: Number.POSITIVE_INFINITY,
    drive,
    ...ladders(network, drive, longestStep(network)),
    time: 0,
    here: instant(size),
    there: instant(size),
    next: new Float64Array(size),
    terms: seriesRoom(size),
    conductorResistance: network.primary.resistance - (options.bankResistance ?? 0),
    drop: switchesInPath(drive) * drive.onStateVoltage,
    railResistance: railSeriesResistance(drive),
    direction: 0,
    rail: 1,
    rails: { up: rail, down: rail },
    bank: 0,
    elastance: { bank: 1 / network.primary.capacitance, rail: 1 / railCapacitance(drive) },
    lowestBus: drive.busVoltage,
    control: startControl(drive),
    sums: noIntegrals(),
    before: { squareCurrent: 0, charge: 0 },
    record: burstRecord(
      network.modes.length,
      period / (options.samplesPerPeriod ?? 32),
      options.baseCurrentRatios ?? [],
      options.waveform ?? true,
    ),
    settling: 0,
    largestSecondaryEnergy: 0,
    steps: 0,
  };
}

export function openLadder(run: BurstRun): StepLadder {
  run.open ??= stepLadder(openSystem(run.network), run.conducting.step);
  return run.open;
}

export function presentLadder(run: BurstRun): StepLadder {
  return run.direction === 0 ? openLadder(run) : run.conducting;
}

export function refreshRate(run: BurstRun): void {
  const { system } = presentLadder(run);
  transform(system.size, system.entries, run.here.x, run.here.rate);
}

/** V of the rail that conducts, with the sign it drives the current with. */
export function railDriving({ rail, rails }: BurstRun): number {
  return rail === 1 ? rails.up : -rails.down;
}

/** Moves the charge that has passed from here to there out of the rail and into the bank. Gives it, A·s. */
export function moveCharge(run: BurstRun): number {
  const { elastance, rails, rail, here, there } = run;
  const charge = (here.x[SOURCE] - there.x[SOURCE]) / (elastance.bank + elastance.rail);
  run.bank += elastance.bank * charge;
  const fall = rail * elastance.rail * charge;
  if (run.drive.bridge === "full" || rail === 1) rails.up -= fall;
  if (run.drive.bridge === "full" || rail === -1) rails.down -= fall;
  run.lowestBus = Math.min(run.lowestBus, busVoltage(run));
  return charge;
}

/** V beyond the switches' drop that would drive a current up through the open primary; below 0 none flows. */
export function upwardVoltage({ network, rails, bank, control, drop }: BurstRun, x: Float64Array): number {
  return inducedVoltage(network, x) - bank + (control.gate === 1 ? rails.up : -rails.down) - drop;
}

/** V, likewise down. */
export function downwardVoltage({ network, rails, bank, control, drop }: BurstRun, x: Float64Array): number {
  return bank - inducedVoltage(network, x) + (control.gate === -1 ? rails.down : -rails.up) - drop;
}

/** Direction in which a current would begin to flow now; 0 where the circuit stays open. */
function startingDirection(run: BurstRun, x: Float64Array): Polarity | 0 {
  if (upwardVoltage(run, x) > 0) return 1;
  return downwardVoltage(run, x) > 0 ? -1 : 0;
}

/** The rail that a current finds: of the pair that is on, else the one that the diodes return it to. */
function railFor(run: BurstRun, direction: Polarity): Polarity {
  return run.control.gate === 0 ? (-direction as Polarity) : run.control.gate;
}

function conduct(run: BurstRun, direction: Polarity): void {
  run.direction = direction;
  run.rail = railFor(run, direction);
  run.here.x[SOURCE] = railDriving(run) - direction * run.drop - run.bank;
}

/** Settles which way the current goes after a switching or a zero. */
export function settle(run: BurstRun): void {
  const { x } = run.here;
  const direction = run.direction === 0 ? startingDirection(run, x) : run.direction;
  if (direction === 0) stop(run);
  else conduct(run, direction);
  refreshRate(run);
}

/** The current has come to zero: it goes on the other way, or not at all. */
export function currentZero(run: BurstRun): void {
  run.here.x[CURRENT] = 0;
  run.direction = 0;
  settle(run);
}

function stop(run: BurstRun): void {
  run.direction = 0;
  run.here.x[CURRENT] = 0;
  run.here.x[SOURCE] = 0;
}

/** Two of a length keep the integrals of an exponential settling to 1e-3 of it. */
export const STEPS_PER_RUNG = 2;

/** Steps in which a renewed load is followed, from a quarter of the time it settles in up to the longest. */
function settlingSteps({ resistance, capacitance }: SparkLoad, step: number): number {
  const time = Math.max(resistance, LEAST_SPARK_RESISTANCE) * capacitance;
  return STEPS_PER_RUNG * Math.max(0, Math.ceil(Math.log2((4 * step) / time)));
}

/** What a renewed load's ladders cost, in steps. */
const STEPS_PER_RENEWAL = 10;

/** Renews the spark's load for the half cycle that begins. */
export function growSpark(run: BurstRun): void {
  const { growth, full, drive } = run;
  if (!growth || run.network.load?.capacitance === full.load?.capacitance) return;
  if (run.brokeOutAt === Number.POSITIVE_INFINITY) {
    const highest = highestTopVoltage(run.record);
    if (highest.value < growth.breakoutVoltage) return;
    run.brokeOutAt = highest.time;
  }
  const load = grownLoad(full.load, growth, run.time - run.brokeOutAt);
  if (!load) return;
  const renewed = { ...full, load };
  run.sums.spark += renewLoad(run.network, renewed, run.here.x);
  run.network = renewed;
  Object.assign(run, ladders(renewed, drive, run.conducting.step));
  run.settling = settlingSteps(load, run.conducting.step);
  run.steps += STEPS_PER_RENEWAL;
}

/** V of the whole bus. */
export function busVoltage({ drive, rails }: BurstRun): number {
  return drive.bridge === "full" ? rails.up : rails.up + rails.down;
}
