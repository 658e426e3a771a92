/** What is computed of the secondary, in SI units. */
import type { ProfilePoint } from "../../calc/coil/modeProfile";

export interface SecondaryResult {
  inductance: number;
  wireLength: number;
  wireMass: number;
  dcResistance: number;
  acResistance: number;
  /** turns' centre to centre */
  pitch: number;
  bareResonance: number;
  resonance: number;
  loadedResonance: number;
  /** null while the primary has no solution */
  resonancePrimaryShorted: number | null;
  overtones: number[];
  effectiveInductance: number;
  effectiveCapacitance: number;
  profile: ProfilePoint[];
  qualityFactor: number;
  /** V/m along the winding per volt at the top, largest */
  maximumGradientPerVolt: number;
  /** V/m along the winding with the top load at its breakout voltage; null without a top load */
  maximumGradient: number | null;
}

/** Relative change of the secondary's resonance that each correction makes, whether it is on or off. */
export interface CorrectionsResult {
  formerShift: number;
  floorShift: number;
  wireCurrentShift: number;
}
