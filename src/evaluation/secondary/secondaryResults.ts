/** Results of the secondary, in SI units. */
import type { ProfilePoint } from "../../calc/coil/modeProfile";

export interface SecondaryResult {
  inductance: number;
  wireLength: number;
  wireMass: number;
  dcResistance: number;
  acResistance: number;
  /** m, between centres of neighbouring turns */
  pitch: number;
  bareResonance: number;
  resonance: number;
  loadedResonance: number;
  /** null if the primary has no solution */
  resonancePrimaryShorted: number | null;
  overtones: number[];
  effectiveInductance: number;
  effectiveCapacitance: number;
  profile: ProfilePoint[];
  qualityFactor: number;
  /** V/m, largest along the winding, per volt at the top */
  maximumGradientPerVolt: number;
  /** V/m along the winding with the top load at its breakout voltage; null without a top load */
  maximumGradient: number | null;
}

/** Relative change of the secondary's resonance by each correction, whether it is on or off. */
export interface CorrectionsResult {
  formerShift: number;
  floorShift: number;
  wireCurrentShift: number;
}
