/**
 * Mains to bus: a rectifier with a reservoir, stepped through the mains' cycles until it repeats.
 *
 * One loop of source resistance and inductance, ideal diodes, and the reservoir under a load of constant
 * power, as bursts on the average are. A three-phase bridge is taken as its six-pulse envelope with two lines
 * in the loop, overlap of the phases left out. A doubler charges the upper half of its reservoir in one half
 * cycle, the lower in the other.
 * Source: the circuit's own equations; O. H. Schade, Proc. IRE 31 (1943), 341, treats the same circuit by charts.
 */
import type { Supply } from "../design-parts";

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

/** V; the mains' voltage RMS, line to line for three phases. */
export function noLoadBusVoltage({ arrangement, mainsVoltage }: Supply): number {
  if (arrangement === "bench") return mainsVoltage;
  return (arrangement === "doubler" ? 2 : 1) * Math.SQRT2 * mainsVoltage;
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
  const { arrangement, sourceResistance, sourceInductance } = supply;
  const turns = arrangement === "doubler" ? 2 : 1;
  const lines = arrangement === "three-phase bridge" ? 2 : 1;
  return {
    voltage: noLoadBusVoltage(supply) / turns,
    resistance: lines * sourceResistance,
    inductance: lines * sourceInductance,
    capacitance: turns * reservoirCapacitance,
    turns,
  };
}

const STEPS_PER_PULSE = 600;
const MOST_PULSES = 2500;
/** Ω, least resistance of a source: an ideal one would charge in no time. */
const LEAST_RESISTANCE = 1e-3;

interface Loop {
  resistance: number;
  inductance: number;
  /** F that one pulse charges */
  capacitance: number;
  /** V of the rectified source at the end of each step of a pulse */
  source: Float64Array;
  /** s */
  pulse: number;
}

function loopOf({ supply, reservoirCapacitance }: Rectifier): Loop {
  const { arrangement, mainsFrequency, mainsVoltage, sourceResistance, sourceInductance } = supply;
  const three = arrangement === "three-phase bridge";
  const lines = three ? 2 : 1;
  const amplitude = Math.SQRT2 * mainsVoltage;
  const capacitance = (arrangement === "doubler" ? 2 : 1) * reservoirCapacitance;
  return {
    resistance: Math.max(lines * sourceResistance, LEAST_RESISTANCE),
    inductance: lines * sourceInductance,
    capacitance,
    pulse: 1 / ((three ? 6 : 2) * mainsFrequency),
    source: Float64Array.from({ length: STEPS_PER_PULSE }, (_, index) => {
      const part = (index + 1) / STEPS_PER_PULSE;
      return three
        ? amplitude * Math.cos(((part - 0.5) * Math.PI) / 3)
        : amplitude * Math.sin(part * Math.PI);
    }),
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

/** What is charged in this pulse, what waits (a doubler's other half), and the current in the loop. */
interface Bus {
  charged: number;
  waiting: number;
  current: number;
}

function busOf(arrangement: Supply["arrangement"], { charged, waiting }: Bus): number {
  return arrangement === "doubler" ? charged + waiting : charged;
}

/** What the load takes of the bus: at most what would empty it in a step. */
function loadCurrent(power: number, voltage: number, noLoad: number, emptying: number): number {
  return Math.max(0, Math.min(power / Math.max(voltage, 0.1 * noLoad), voltage * emptying));
}

/**
 * One pulse, in one loop over plain numbers, because some supplies take thousands of pulses to settle. The loop's
 * current goes by the implicit rule of Euler: a source without inductance, stiff as it is, stays stable.
 */
function runPulse(rectifier: Rectifier, loop: Loop, bus: Bus, noLoad: number): Pulse {
  const doubler = rectifier.supply.arrangement === "doubler";
  const { resistance, inductance, capacitance, source, pulse } = loop;
  const step = pulse / STEPS_PER_PULSE;
  const kept = inductance / step;
  const emptying = (doubler ? 0.5 : 1) * (capacitance / step);
  const impedance = resistance + kept + step / capacitance;
  let { charged, waiting, current } = bus;
  let voltage = doubler ? charged + waiting : charged;
  let [charge, squareCharge, energy, voltageTime] = [0, 0, 0, 0];
  let [peak, lowest, highest] = [0, Number.POSITIVE_INFINITY, 0];
  for (let index = 0; index < STEPS_PER_PULSE; index++) {
    current = Math.max(0, (source[index] - charged + kept * current) / impedance);
    const taken = loadCurrent(rectifier.power, voltage, noLoad, emptying);
    charged += ((current - taken) * step) / capacitance;
    if (doubler) waiting -= (taken * step) / capacitance;
    voltage = doubler ? charged + waiting : charged;
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

/** A doubler's halves change places from pulse to pulse. */
function changePlaces(bus: Bus): void {
  [bus.charged, bus.waiting] = [bus.waiting, bus.charged];
}

/** Whether a pulse left the bus where it found it, against the charge that went through. */
function repeats(change: number, loop: Loop, { charge }: Pulse): boolean {
  return Math.abs(change) * loop.capacitance <= 1e-4 * charge;
}

function steadyPulse(rectifier: Rectifier, loop: Loop, noLoad: number): Pulse {
  const { arrangement } = rectifier.supply;
  const doubler = arrangement === "doubler";
  const bus: Bus = { charged: noLoad / (doubler ? 2 : 1), waiting: noLoad / 2, current: 0 };
  for (let count = 1; ; count++) {
    const before = busOf(arrangement, bus);
    const pulse = runPulse(rectifier, loop, bus, noLoad);
    if (repeats(busOf(arrangement, bus) - before, loop, pulse) || count === MOST_PULSES) return pulse;
    if (doubler) changePlaces(bus);
  }
}

/** RMS in a line over that of the rectifier's output: in three phases a line carries four pulses of six. */
function lineShare({ arrangement }: Supply): number {
  return arrangement === "three-phase bridge" ? Math.sqrt(2 / 3) : 1;
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
 * Accuracy: some 0.5 % against a circuit simulator; diodes' drops are not in it.
 */
export function rectifierUnderLoad(rectifier: Rectifier): RectifierResult {
  const { supply } = rectifier;
  if (supply.arrangement === "bench") return bench(rectifier);
  const noLoadVoltage = noLoadBusVoltage(supply);
  const loop = loopOf(rectifier);
  const pulse = steadyPulse(rectifier, loop, noLoadVoltage);
  const loopRms = Math.sqrt(pulse.squareCharge / loop.pulse);
  const share = supply.arrangement === "doubler" ? 0.5 : 1;
  const mainsCurrent = lineShare(supply) * loopRms;
  const phases = supply.arrangement === "three-phase bridge" ? Math.sqrt(3) : 1;
  const apparentPower = phases * supply.mainsVoltage * mainsCurrent;
  const mainsPower = pulse.energy / loop.pulse;
  return {
    noLoadVoltage,
    meanVoltage: pulse.voltageTime / loop.pulse,
    lowestVoltage: pulse.lowest,
    highestVoltage: pulse.highest,
    ripple: pulse.highest - pulse.lowest,
    meanCurrent: (share * pulse.charge) / loop.pulse,
    rmsCurrent: Math.sqrt(share) * loopRms,
    peakCurrent: pulse.peak,
    mainsCurrent,
    apparentPower,
    mainsPower,
    powerFactor: apparentPower > 0 ? mainsPower / apparentPower : 1,
    carriesLoad: pulse.lowest > 0.5 * noLoadVoltage,
  };
}
