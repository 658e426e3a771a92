/**
 * How half and full bridges use bus, reservoir and switches. In a full bridge the whole bus drives the load
 * through two switches at a time; in a half bridge one half of the reservoir does, two equal capacitors standing in
 * series across the bus, through one switch.
 */

export interface Bridge {
  bridge: "half" | "full";
}

function isFull({ bridge }: Bridge): boolean {
  return bridge === "full";
}

/** Switches that the current passes one after the other. */
export function switchesInPath(drive: Bridge): number {
  return isFull(drive) ? 2 : 1;
}

/** V that drives the load. */
export function railVoltage(drive: Bridge & { busVoltage: number }): number {
  return isFull(drive) ? drive.busVoltage : 0.5 * drive.busVoltage;
}

/** F of the part of the reservoir that drives. */
export function railCapacitance(drive: Bridge & { reservoirCapacitance: number }): number {
  return isFull(drive) ? drive.reservoirCapacitance : 2 * drive.reservoirCapacitance;
}

/** Ω of the part of the reservoir that drives. */
export function railSeriesResistance(drive: Bridge & { reservoirSeriesResistance: number }): number {
  return isFull(drive) ? drive.reservoirSeriesResistance : 0.5 * drive.reservoirSeriesResistance;
}

/** Part of the half cycles in which one and the same part of the reservoir is loaded. */
export function reservoirShare(drive: Bridge): number {
  return isFull(drive) ? 1 : 0.5;
}
