/** The response of a coupled network with and without the spark: poles, beat, crossings and curves. */
import { finiteOrNull } from "../finiteOrNull";
import type { Network } from "./network";
import { type PolePair, polePair } from "./poles";
import { type ResponseSample, responseCurve } from "./responseCurve";
import { zeroPhaseCrossings } from "./zeroPhase";

/** Difference of the two poles, Hz: how often energy moves back and forth between primary and secondary. */
export function beatFrequency({ lower, upper }: PolePair): number {
  return upper.frequency - lower.frequency;
}

/**
 * Time of the first maximum of the top voltage's envelope, s, after a drive midway between the poles
 * begins: each pole is off by half the beat, so the envelope goes as 1 − cos(π·beat·t).
 * Lossless; Infinity if the poles coincide. Source: circuit theory, superposition of two driven resonances.
 */
export function firstTopVoltageMaximum(poles: PolePair): number {
  return 1 / beatFrequency(poles);
}

/** A frequency at which the bridge sees a pure resistance. */
export interface ZeroPhase {
  frequency: number;
  resistance: number;
  /** series: inductive above it, where feedback from the current locks; parallel: the opposite */
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
  /** s after a drive midway between the poles begins, unloaded; null if the poles coincide */
  firstMaximum: number | null;
  zeroPhase: ZeroPhase[];
  loadedZeroPhase: ZeroPhase[];
  curve: ResponseSample[];
  loadedCurve: ResponseSample[];
}

const MOST_SAMPLES = 400;
/** The chart reaches this much below the lower and above the upper pole, in octaves of their ratio to it. */
const MARGIN = 1.35;
const FIRST_SAMPLES = 24;

/** Frequencies to begin with: a geometric row, and each pole with its flanks. */
function firstFrequencies(from: number, to: number, poles: readonly number[]): number[] {
  const row = Array.from(
    { length: FIRST_SAMPLES + 1 },
    (_, index) => from * (to / from) ** (index / FIRST_SAMPLES),
  );
  const flanks = poles.flatMap((pole) => [0.99, 0.998, 1, 1.002, 1.01].map((part) => pole * part));
  return [...row, ...flanks].sort((a, b) => a - b);
}

function zeroPhase(network: Network, from: number, to: number, poles: readonly number[]): ZeroPhase[] {
  return zeroPhaseCrossings(network, from, to, poles).map(({ frequency, resistance, slope }) => ({
    frequency,
    resistance,
    kind: slope > 0 ? "series" : "parallel",
  }));
}

/** Response with and without the spark, over both poles; null if the poles cannot be found. */
export function responseResult(unloaded: Network, loaded: Network): ResponseResult | null {
  const bare = polePair(unloaded);
  const sparked = polePair(loaded);
  if (!bare || !sparked) return null;
  const poles = [bare.lower, bare.upper, sparked.lower, sparked.upper].map((pole) => pole.frequency);
  const [from, to] = [Math.min(...poles) / MARGIN, Math.max(...poles) * MARGIN];
  const curve = (network: Network, own: readonly number[]) =>
    responseCurve(network, firstFrequencies(from, to, own), MOST_SAMPLES);
  return {
    lowerPole: bare.lower.frequency,
    upperPole: bare.upper.frequency,
    loadedLowerPole: sparked.lower.frequency,
    loadedUpperPole: sparked.upper.frequency,
    lowerPoleQuality: finiteOrNull(bare.lower.qualityFactor),
    upperPoleQuality: finiteOrNull(bare.upper.qualityFactor),
    loadedLowerPoleQuality: finiteOrNull(sparked.lower.qualityFactor),
    loadedUpperPoleQuality: finiteOrNull(sparked.upper.qualityFactor),
    beatFrequency: beatFrequency(bare),
    firstMaximum: finiteOrNull(firstTopVoltageMaximum(bare)),
    zeroPhase: zeroPhase(unloaded, from, to, poles.slice(0, 2)),
    loadedZeroPhase: zeroPhase(loaded, from, to, poles.slice(2)),
    curve: curve(unloaded, poles.slice(0, 2)),
    loadedCurve: curve(loaded, poles.slice(2)),
  };
}
