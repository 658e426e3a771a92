/** What is computed of the response, in SI units. */

export interface ResponsePoint {
  frequency: number;
  topVoltagePerVolt: number;
  inputImpedance: { magnitude: number; phase: number };
}

/** A frequency at which the bridge sees a pure resistance. */
export interface ZeroPhase {
  frequency: number;
  resistance: number;
  /** series: inductive above it, where a feedback from the current locks; parallel: the other way */
  kind: "series" | "parallel";
}

export interface ResponseResult {
  lowerPole: number;
  upperPole: number;
  loadedLowerPole: number;
  loadedUpperPole: number;
  /** null without any loss */
  lowerPoleQuality: number | null;
  upperPoleQuality: number | null;
  loadedLowerPoleQuality: number | null;
  loadedUpperPoleQuality: number | null;
  /** Hz, unloaded */
  beatFrequency: number;
  /** s after a drive midway between the poles begins, unloaded; null where the poles coincide */
  firstMaximum: number | null;
  zeroPhase: ZeroPhase[];
  loadedZeroPhase: ZeroPhase[];
  curve: ResponsePoint[];
  loadedCurve: ResponsePoint[];
}
