/**
 * Everything that is computed from a design, all in SI units. Never saved as truth, never edited.
 * A result's id is its dotted path here. A group that cannot be solved is null, with an error finding.
 */
import type { BankResult, BurstGroup, DriveResult, TankResult } from "./driveResults";
import type { Finding } from "./findings/finding";

export interface ProfilePoint {
  /** m above ground */
  height: number;
  /** normalised to its maximum */
  voltage: number;
  /** normalised to its maximum */
  current: number;
}

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

export interface TopLoadResult {
  capacitance: number;
  surfaceFieldPerVolt: number;
  breakoutVoltage: number;
  breakoutVoltageAtPoint: { low: number; typical: number; high: number } | null;
  /** m, overall */
  outerDiameter: number;
  height: number;
  /** m², outside surface */
  surfaceArea: number;
  /** kg, as spun aluminium (common practice wall) */
  mass: number;
}

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

export interface CouplingResult {
  uniformCurrent: number;
  atResonance: number;
  /** of the whole primary circuit, leads included */
  circuit: number;
  mutualInductance: number;
}

/** One of the losses of a circuit. */
export interface LossPart {
  /** Ω */
  resistance: number;
  /** of the circuit's whole */
  share: number;
}

/** Where each circuit loses its energy, as computed; a measured Q does not change the parts. */
export interface LossesResult {
  /** referred to the largest current of the fundamental */
  secondary: {
    total: number;
    directCurrent: LossPart;
    skin: LossPart;
    proximity: LossPart;
    allowance: LossPart;
  };
  primary: {
    total: number;
    tube: LossPart;
    bank: LossPart;
    switches: LossPart;
    allowance: LossPart;
  };
}

/** Relative change of the secondary's resonance that each correction makes, whether it is on or off. */
export interface CorrectionsResult {
  formerShift: number;
  floorShift: number;
  wireCurrentShift: number;
}

export interface TuningPoint {
  tap: number;
  primaryResonance: number;
  /** lossless, unloaded */
  lowerPole: number;
  upperPole: number;
  loadedLowerPole: number;
  loadedUpperPole: number;
  coupling: number;
}

export interface TuningResult {
  /** turns; null where the aim cannot be reached or is not known yet */
  suggestedTap: number | null;
  /** taps within which the winding's tolerance puts it */
  suggestedTapBand: { low: number; high: number } | null;
  /** Hz, what the primary is tuned to; null while bursts are not swept for the aim "most energy" */
  targetResonance: number | null;
  /** relative difference of the primary's resonance from the target; null where the tap is not on the conductor */
  detuning: number | null;
  tuned: boolean;
  curve: TuningPoint[];
}

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

/** The first group of a reply: what the numbers and the drawing show, within the frame. */
export interface FieldEvaluation {
  secondary: SecondaryResult | null;
  topLoad: TopLoadResult | null;
  primary: PrimaryResult | null;
  coupling: CouplingResult | null;
  tank: BankResult | null;
  tuning: TuningResult | null;
  losses: LossesResult | null;
}

/** The second group: response, burst, what they ask of the parts, and findings, by the next frame. */
export interface DriveEvaluation {
  response: ResponseResult | null;
  burst: BurstGroup | null;
  tank: TankResult | null;
  drive: DriveResult | null;
  corrections: CorrectionsResult | null;
  findings: Finding[];
}

export type Evaluation = Omit<FieldEvaluation, keyof DriveEvaluation> & DriveEvaluation;

/** What the rules judge. */
export type Judged = Omit<Evaluation, "findings">;
