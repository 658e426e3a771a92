/** What is computed of the primary, in SI units. */

export interface TurnRadius {
  /** turns from the start, 0, 1, 2 … and the end */
  turn: number;
  radius: number;
  height: number;
}

export interface PrimaryResult {
  inductance: number;
  fullInductance: number;
  lowFrequencyInductance: number;
  resonance: number;
  conductorLength: number;
  fullConductorLength: number;
  turnRadii: TurnRadius[];
  /** end of the unused turns, volts per volt across the active arc; 1 with no unused turns */
  freeEndVoltage: number;
  qualityFactor: number;
  acResistance: number;
}
