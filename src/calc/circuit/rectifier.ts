/**
 * Mains to bus: a rectifier with a reservoir, stepped through the mains' cycles until it repeats.
 *
 * One loop of source resistance and inductance, ideal diodes, and the reservoir under a load of constant
 * power, as bursts are on average. A three-phase bridge is modelled as its six-pulse envelope with two lines
 * in the loop, overlap of the phases left out. A doubler charges the upper half of its reservoir in one half
 * cycle, the lower in the other.
 * Source: circuit theory; schade1943, which treats the same circuit with charts.
 */
import type { Supply } from "../design-parts";
import { type Rectification, SUPPLY_ARRANGEMENTS } from "./supplyArrangement";

export interface Rectifier {
  supply: Supply;
  /** F across the whole bus */
  reservoirCapacitance: number;
  /** W taken from the bus, mean */
  power: number;
}

export interface RectifierResult {
  /** V at no load */
  noLoadVoltage: number;
  /** V, mean, least and largest of the bus under load */
  meanVoltage: number;
  lowestVoltage: number;
  highestVoltage: number;
  /** V, peak to peak */
  ripple: number;
  /** A out of the rectifier into the reservoir, a half of it in a doubler: mean, RMS and largest */
  meanCurrent: number;
  rmsCurrent: number;
  peakCurrent: number;
  /** A in a line of the mains */
  mainsCurrent: number;
  /** VA, W and their ratio */
  apparentPower: number;
  mainsPower: number;
  powerFactor: number;
  /** the supply carries the load; where false, the bus falls under half of its no-load voltage */
  carriesLoad: boolean;
}

/** V of the bus at no load. */
export function noLoadBusVoltage({ arrangement, mainsVoltage }: Supply): number {
  const { parts, crest } = SUPPLY_ARRANGEMENTS[arrangement];
  return parts * crest * mainsVoltage;
}

export interface ChargingPath {
  /** V at the mains' crest */
  voltage: number;
  /** Ω and H of the source in the loop */
  resistance: number;
  inductance: number;
  /** F that one pulse charges */
  capacitance: number;
  /** parts of the reservoir that are charged in turns */
  turns: 1 | 2;
}

/** The loop that charges an empty reservoir: a half of a doubler's at a time, two lines of three phases. */
export function chargingPath(supply: Supply, reservoirCapacitance: number): ChargingPath {
  const { parts, crest, linesInLoop } = SUPPLY_ARRANGEMENTS[supply.arrangement];
  return {
    voltage: crest * supply.mainsVoltage,
    resistance: linesInLoop * supply.sourceResistance,
    inductance: linesInLoop * supply.sourceInductance,
    capacitance: parts * reservoirCapacitance,
    turns: parts,
  };
}

const STEPS_PER_PULSE = 600;
const MOST_PULSES = 2500;
/** Ω, least resistance of a source: an ideal one would charge in no time. */
const LEAST_RESISTANCE = 1e-3;

interface Loop extends ChargingPath {
  /** V of the rectified source at the end of each step of a pulse */
  source: Float64Array;
  /** s */
  pulse: number;
}

function loopOf({ supply, reservoirCapacitance }: Rectifier, { pulsesPerCycle, wave }: Rectification): Loop {
  const path = chargingPath(supply, reservoirCapacitance);
  return {
    ...path,
    resistance: Math.max(path.resistance, LEAST_RESISTANCE),
    pulse: 1 / (pulsesPerCycle * supply.mainsFrequency),
    source: Float64Array.from(
      { length: STEPS_PER_PULSE },
      (_, index) => path.voltage * wave((index + 1) / STEPS_PER_PULSE),
    ),
  };
}

/** Sums over one pulse. */
interface Pulse {
  charge: number;
  squareCharge: number;
  energy: number;
  peak: number;
  voltageTime: number;
  lowest: number;
  highest: number;
}

/** V of the part charged in this pulse and of the waiting one (a doubler's other half, else 0), and A in the loop. */
interface Bus {
  charged: number;
  waiting: number;
  current: number;
}

function busOf({ charged, waiting }: Bus): number {
  return charged + waiting;
}

/** Voltage that the load takes from the bus: at most what would empty it in a step. */
function loadCurrent(power: number, voltage: number, noLoad: number, emptying: number): number {
  return Math.max(0, Math.min(power / Math.max(voltage, 0.1 * noLoad), voltage * emptying));
}

/**
 * One pulse, in one loop over plain numbers, because some supplies take thousands of pulses to settle. The loop's
 * current is integrated by the implicit Euler rule, which stays stable for a stiff source without inductance.
 */
function runPulse(power: number, loop: Loop, bus: Bus): Pulse {
  const { resistance, inductance, capacitance, source, pulse, turns } = loop;
  const noLoad = turns * loop.voltage;
  const step = pulse / STEPS_PER_PULSE;
  const kept = inductance / step;
  const emptying = capacitance / step / turns;
  const waits = turns - 1;
  const impedance = resistance + kept + step / capacitance;
  let { charged, waiting, current } = bus;
  let voltage = charged + waiting;
  let [charge, squareCharge, energy, voltageTime] = [0, 0, 0, 0];
  let [peak, lowest, highest] = [0, Number.POSITIVE_INFINITY, 0];
  for (let index = 0; index < STEPS_PER_PULSE; index++) {
    current = Math.max(0, (source[index] - charged + kept * current) / impedance);
    const taken = loadCurrent(power, voltage, noLoad, emptying);
    charged += ((current - taken) * step) / capacitance;
    waiting -= (waits * taken * step) / capacitance;
    voltage = charged + waiting;
    charge += current * step;
    squareCharge += current * current * step;
    energy += source[index] * current * step;
    peak = Math.max(peak, current);
    voltageTime += voltage * step;
    lowest = Math.min(lowest, voltage);
    highest = Math.max(highest, voltage);
  }
  Object.assign(bus, { charged, waiting, current });
  return { charge, squareCharge, energy, peak, voltageTime, lowest, highest };
}

/** A doubler's halves alternate from pulse to pulse. */
function changePlaces(bus: Bus): void {
  [bus.charged, bus.waiting] = [bus.waiting, bus.charged];
}

/** Whether a pulse left the bus where it found it, against the charge that went through. */
function repeats(change: number, loop: Loop, { charge }: Pulse): boolean {
  return Math.abs(change) * loop.capacitance <= 1e-4 * charge;
}

function steadyPulse(power: number, loop: Loop): Pulse {
  const bus: Bus = { charged: loop.voltage, waiting: (loop.turns - 1) * loop.voltage, current: 0 };
  for (let count = 1; ; count++) {
    const before = busOf(bus);
    const pulse = runPulse(power, loop, bus);
    if (repeats(busOf(bus) - before, loop, pulse) || count === MOST_PULSES) return pulse;
    if (loop.turns === 2) changePlaces(bus);
  }
}

function bench({ supply, power }: Rectifier): RectifierResult {
  const { mainsVoltage, sourceResistance } = supply;
  const inner = mainsVoltage * mainsVoltage - 4 * power * sourceResistance;
  const voltage = 0.5 * (mainsVoltage + Math.sqrt(Math.max(inner, 0)));
  const current = voltage > 0 ? power / voltage : 0;
  const drawn = mainsVoltage * current;
  return {
    noLoadVoltage: mainsVoltage,
    meanVoltage: voltage,
    lowestVoltage: voltage,
    highestVoltage: voltage,
    ripple: 0,
    meanCurrent: current,
    rmsCurrent: current,
    peakCurrent: current,
    mainsCurrent: current,
    apparentPower: drawn,
    mainsPower: drawn,
    powerFactor: 1,
    carriesLoad: inner >= 0,
  };
}

/**
 * Voltages and currents of the supply under a mean load, when it repeats from cycle to cycle.
 * Accuracy: about 0.5 % against a circuit simulator; diode drops are not included.
 */
export function rectifierUnderLoad(rectifier: Rectifier): RectifierResult {
  const { supply } = rectifier;
  const { parts, rectification } = SUPPLY_ARRANGEMENTS[supply.arrangement];
  if (!rectification) return bench(rectifier);
  const noLoadVoltage = noLoadBusVoltage(supply);
  const loop = loopOf(rectifier, rectification);
  const pulse = steadyPulse(rectifier.power, loop);
  const loopRms = Math.sqrt(pulse.squareCharge / loop.pulse);
  const mainsCurrent = rectification.lineShare * loopRms;
  const apparentPower = rectification.phaseFactor * supply.mainsVoltage * mainsCurrent;
  const mainsPower = pulse.energy / loop.pulse;
  return {
    noLoadVoltage,
    meanVoltage: pulse.voltageTime / loop.pulse,
    lowestVoltage: pulse.lowest,
    highestVoltage: pulse.highest,
    ripple: pulse.highest - pulse.lowest,
    meanCurrent: pulse.charge / parts / loop.pulse,
    rmsCurrent: loopRms / Math.sqrt(parts),
    peakCurrent: pulse.peak,
    mainsCurrent,
    apparentPower,
    mainsPower,
    powerFactor: apparentPower > 0 ? mainsPower / apparentPower : 1,
    carriesLoad: pulse.lowest > 0.5 * noLoadVoltage,
  };
}
