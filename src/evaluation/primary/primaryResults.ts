/** Results of the primary, in SI units. */
import type { TurnPlace } from "../../calc/coil/primaryGeometry";

export interface PrimaryResult {
  inductance: number;
  fullInductance: number;
  lowFrequencyInductance: number;
  resonance: number;
  conductorLength: number;
  fullConductorLength: number;
  turnRadii: TurnPlace[];
  /** voltage of the free end per volt across the active turns; 1 without unused turns */
  freeEndVoltage: number;
  qualityFactor: number;
  acResistance: number;
}
