/** Results of mains, rectifier and reservoir, in SI units. */
import type { OrNull } from "../orNull";

/** Results of the supply's own parts, independent of the coil. */
export interface SupplyAtRest {
  /** V at no load */
  busVoltage: number;
  duty: number;
  reservoirEnergy: number;
  /** A into the empty reservoir, without and with the pre-charge resistor */
  inrushCurrent: number | null;
  prechargeCurrent: number;
  prechargeTime: number;
  prechargeEnergy: number;
  /** s to 60 V through the discharge resistor, and its power at the full bus */
  dischargeTime: number;
  dischargePower: number;
}

/** Results of the supply with the design's repeated bursts. */
export interface SupplyUnderBurst {
  /** W taken from the reservoir at the repetition rate */
  averagePower: number;
  /** V, mean and minimum of the bus under that power */
  meanBusVoltage: number;
  lowestBusVoltage: number;
  busRipple: number;
  /** A, peak of the rectifier's pulses */
  chargingCurrent: number;
  /** A RMS in a line, and results that follow from it; null for a bench supply, whose mains side is unknown */
  mainsCurrent: number | null;
  apparentPower: number | null;
  powerFactor: number | null;
  carriesLoad: boolean;
  /** A; a hint for the licensed person; null if the circuit's own rating is below it, and for a bench supply */
  fuseHint: number | null;
  reservoirRmsCurrent: number;
}

export type SupplyResult = SupplyAtRest & OrNull<SupplyUnderBurst>;
