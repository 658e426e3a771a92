/** What is computed of the primary, in SI units. */
import type { TurnPlace } from "../../calc/coil/primaryGeometry";

export interface PrimaryResult {
  inductance: number;
  fullInductance: number;
  lowFrequencyInductance: number;
  resonance: number;
  conductorLength: number;
  fullConductorLength: number;
  turnRadii: TurnPlace[];
  /** end of the unused turns, volts per volt across the active arc; 1 with no unused turns */
  freeEndVoltage: number;
  qualityFactor: number;
  acResistance: number;
}
