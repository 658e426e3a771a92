/** Losses and temperature of one switching device, and the power of its gate. */
import type { BurstResult } from "../burst/burstResult";
import type { HalfCycle, TurnOff } from "../burst/record";
import type { Drive } from "../design-parts";
import { switchesInPath } from "./bridge";
import { type HeatPulse, type JunctionRise, repeatedRise } from "./foster";

export interface SwitchLosses {
  /** J a burst in one device */
  conductionEnergy: number;
  turnOffEnergy: number;
  /** W in one device, mean */
  power: number;
  /** K */
  rise: JunctionRise;
  peakJunction: number;
  meanJunction: number;
  /** K, margin to the limit at the worst moment */
  margin: number;
  /** A in one device */
  peakCurrent: number;
  turnOffCurrent: number;
  /** the same without the burst's last turn-off, which the on-time determines */
  commutationCurrent: number;
}

/** A, pulse rating of the parallel devices of one switch. */
export function pulseCurrentLimit({ pulseCurrentRating, parallelDevices }: Drive["switch"]): number {
  return pulseCurrentRating * parallelDevices;
}

/** Ω of the conducting switches in the primary's loop. */
export function onStateLoopResistance(drive: Drive): number {
  const { onStateResistance, parallelDevices } = drive.switch;
  return (onStateResistance / parallelDevices) * switchesInPath(drive);
}

/** Power of one device in a half cycle of the pair that it belongs to, and the energy of its turn-off. */
function heatPulse(drive: Drive, half: HalfCycle, own: boolean): HeatPulse {
  const { onStateVoltage, onStateResistance, parallelDevices } = drive.switch;
  const duration = half.to - half.from;
  if (!own) return { duration, power: 0, energyAtEnd: 0 };
  const conducted = onStateVoltage * half.charge + (onStateResistance / parallelDevices) * half.squareCurrent;
  return {
    duration,
    power: conducted / parallelDevices / duration,
    energyAtEnd: half.turnOffEnergy / parallelDevices,
  };
}

/** The half cycles as heat in a device of either pair. */
function heatPulses(drive: Drive, { halfCycles }: BurstResult): HeatPulse[][] {
  return [1, -1].map((pair) => halfCycles.map((half) => heatPulse(drive, half, half.direction === pair)));
}

function energyOf(pulses: readonly HeatPulse[]): { conduction: number; turnOff: number } {
  return {
    conduction: pulses.reduce((sum, { power, duration }) => sum + power * duration, 0),
    turnOff: pulses.reduce((sum, { energyAtEnd }) => sum + energyAtEnd, 0),
  };
}

function largestTurnOff(turnOffs: readonly TurnOff[]): number {
  return turnOffs.reduce((most, { current }) => Math.max(most, current), 0);
}

/**
 * Losses of one device from a burst's own half cycles, repeated at a rate.
 * A device and its diode are treated as one, so that the diode's current heats the device too; turn-on and the
 * diode's recovery are not included: with feedback from the current they are small.
 */
export function switchLosses(drive: Drive, burst: BurstResult, repetitionRate: number): SwitchLosses {
  const { thermal, caseTemperature, junctionLimit, parallelDevices } = drive.switch;
  const period = repetitionRate > 0 ? 1 / repetitionRate : Number.MAX_VALUE;
  const candidates = heatPulses(drive, burst).map((pulses) => ({
    pulses,
    rise: repeatedRise(thermal, pulses, period),
  }));
  const { pulses, rise } = candidates[0].rise.peak >= candidates[1].rise.peak ? candidates[0] : candidates[1];
  const { conduction, turnOff } = energyOf(pulses);
  return {
    conductionEnergy: conduction,
    turnOffEnergy: turnOff,
    power: (conduction + turnOff) * repetitionRate,
    rise,
    peakJunction: caseTemperature + rise.peak,
    meanJunction: caseTemperature + rise.mean,
    margin: junctionLimit - caseTemperature - rise.peak,
    peakCurrent: burst.peakPrimaryCurrent.value / parallelDevices,
    turnOffCurrent: largestTurnOff(burst.turnOffs) / parallelDevices,
    commutationCurrent: largestTurnOff(burst.turnOffs.slice(0, -1)) / parallelDevices,
  };
}

export interface GateDrive {
  /** A, at the start of each change: the swing over the gate resistance; Infinity without one */
  peakCurrent: number;
  /** J of one device's charge up and down */
  energyPerCycle: number;
  /** W for all devices, mean */
  power: number;
}

/** Gate charge and its power. Source: data sheet, E = Q·ΔU a cycle. */
export function gateDrive(drive: Drive, burst: BurstResult, repetitionRate: number): GateDrive {
  const { gateCharge, gateVoltage, gateResistance, parallelDevices } = drive.switch;
  const energyPerCycle = gateCharge * gateVoltage;
  const devices = switchesInPath(drive) * parallelDevices;
  return {
    peakCurrent: gateVoltage / gateResistance,
    energyPerCycle,
    power: burst.gates.length * devices * energyPerCycle * repetitionRate,
  };
}
