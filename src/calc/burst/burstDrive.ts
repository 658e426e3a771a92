/** The drive of a burst, and the path of the primary current through reservoir, bridge and bank. */
import { railCapacitance, railSeriesResistance, railVoltage, switchesInPath } from "../circuit/bridge";
import type { Commutation, Drive } from "../design-parts";
import type { ConductingPath } from "./system";

/** Of a current, of the rail that it comes from, of the pair that is on: 1 drives the current up. */
export type Polarity = 1 | -1;

/** The properties of bridge, reservoir and control that a burst needs. */
export interface BurstDrive {
  /** V at no load */
  busVoltage: number;
  /** F across the whole bus; Infinity for a stiff one */
  reservoirCapacitance: number;
  /** Ω, of the whole reservoir */
  reservoirSeriesResistance: number;
  bridge: "half" | "full";
  /** V of one switch or its diode: the same line is used for both (common practice) */
  onStateVoltage: number;
  /** Ω, likewise */
  onStateResistance: number;
  /** J per ampere and volt of bus, one switch */
  turnOffEnergyPerVoltAmpere: number;
  commutation: Commutation;
  /** A; Infinity for none */
  overCurrentLimit: number;
  overCurrentAction: "end burst" | "end half cycle";
  /** s */
  onTime: number;
}

/** A design's drive for a burst; devices in parallel share the current equally. */
export function burstDrive(drive: Drive, busVoltage: number, onTime: number): BurstDrive {
  const { parallelDevices, onStateResistance, onStateVoltage } = drive.switch;
  const { turnOffEnergyPerAmpere, turnOffTestVoltage } = drive.switch;
  return {
    busVoltage,
    onTime,
    reservoirCapacitance: drive.reservoirCapacitance,
    reservoirSeriesResistance: drive.reservoirSeriesResistance,
    bridge: drive.bridge,
    onStateVoltage,
    onStateResistance: onStateResistance / parallelDevices,
    turnOffEnergyPerVoltAmpere: turnOffEnergyPerAmpere / turnOffTestVoltage,
    commutation: drive.commutation,
    overCurrentLimit: drive.overCurrentLimit,
    overCurrentAction: drive.overCurrentAction,
  };
}

/** The part of the drive in the network while a current flows. */
export function conductingPath(drive: BurstDrive): ConductingPath {
  return {
    resistance: switchesInPath(drive) * drive.onStateResistance + railSeriesResistance(drive),
    railCapacitance: railCapacitance(drive),
  };
}

/** The state of the primary's circuit from the reservoir to the bank. */
export interface PrimarySide {
  bridge: BurstDrive["bridge"];
  /** V across on-state switches at no current */
  drop: number;
  /** Ω of reservoir in the path */
  railResistance: number;
  /** 1/F of bank and rail */
  elastance: { bank: number; rail: number };
  /** direction of the primary current; 0 while none flows */
  direction: Polarity | 0;
  /** rail that the current comes from */
  rail: Polarity;
  /** V of the rails that drive the current up and down */
  rails: { up: number; down: number };
  /** V across the bank */
  bank: number;
}

/** A full reservoir, an empty bank and no current. */
export function primarySideAtRest(drive: BurstDrive, bankCapacitance: number): PrimarySide {
  const rail = railVoltage(drive);
  return {
    bridge: drive.bridge,
    drop: switchesInPath(drive) * drive.onStateVoltage,
    railResistance: railSeriesResistance(drive),
    elastance: { bank: 1 / bankCapacitance, rail: 1 / railCapacitance(drive) },
    direction: 0,
    rail: 1,
    rails: { up: rail, down: rail },
    bank: 0,
  };
}

/** V of the whole bus. */
export function busVoltage({ bridge, rails }: PrimarySide): number {
  return bridge === "full" ? rails.up : rails.up + rails.down;
}

/** V of the rail that conducts, with the sign it drives the current with. */
export function railDriving({ rail, rails }: PrimarySide): number {
  return rail === 1 ? rails.up : -rails.down;
}

/**
 * Moves the charge that has passed out of the rail and into the bank. Returns it, A·s.
 * @param fall V that the voltage of rail and bank in series has fallen by
 */
export function moveCharge(side: PrimarySide, fall: number): number {
  const { bridge, elastance, rails, rail } = side;
  const charge = fall / (elastance.bank + elastance.rail);
  side.bank += elastance.bank * charge;
  const railFall = rail * elastance.rail * charge;
  if (bridge === "full" || rail === 1) rails.up -= railFall;
  if (bridge === "full" || rail === -1) rails.down -= railFall;
  return charge;
}

/** V beyond the switches' drop that would drive a current up through the open primary; below 0 none flows. */
function upwardVoltage({ rails, bank, drop }: PrimarySide, gate: Polarity | 0, induced: number): number {
  return induced - bank + (gate === 1 ? rails.up : -rails.down) - drop;
}

/** V, likewise down. */
function downwardVoltage({ rails, bank, drop }: PrimarySide, gate: Polarity | 0, induced: number): number {
  return bank - induced + (gate === -1 ? rails.down : -rails.up) - drop;
}

/**
 * V that would drive a current one way or the other through the open primary; below 0 none flows.
 * @param gate the pair that is on; 0 for none
 * @param induced V that the modes induce in the primary
 */
export function startingVoltage(side: PrimarySide, gate: Polarity | 0, induced: number): number {
  return Math.max(upwardVoltage(side, gate, induced), downwardVoltage(side, gate, induced));
}

/** Direction in which a current would begin to flow now; 0 where the circuit stays open. */
export function startingDirection(side: PrimarySide, gate: Polarity | 0, induced: number): Polarity | 0 {
  if (upwardVoltage(side, gate, induced) > 0) return 1;
  return downwardVoltage(side, gate, induced) > 0 ? -1 : 0;
}

/** The rail that a current flows from: that of the pair that is on, else the one that the diodes return it to. */
function railFor(direction: Polarity, gate: Polarity | 0): Polarity {
  if (gate !== 0) return gate;
  return direction === 1 ? -1 : 1;
}

/** Lets a current flow in a direction. Returns the V of rail, switches and bank that drive it. */
export function conduct(side: PrimarySide, direction: Polarity, gate: Polarity | 0): number {
  side.direction = direction;
  side.rail = railFor(direction, gate);
  return railDriving(side) - direction * side.drop - side.bank;
}
