/** What a burst needs to know of bridge, reservoir and control. */
import type { Commutation, Drive } from "../design-parts";

export interface BurstDrive {
  /** V at no load */
  busVoltage: number;
  /** F across the whole bus; Infinity for a stiff one */
  reservoirCapacitance: number;
  /** Ω, of the whole reservoir */
  reservoirSeriesResistance: number;
  bridge: "half" | "full";
  /** V of one switch as it stands, and of its diode: the same line is taken for both (common practice) */
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

/** A design's drive as a burst takes it; devices in parallel share the current equally. */
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
