/** What is told of a design's bursts. */
import { type BurstResult, runningPole } from "../../calc/circuit/burstResult";
import type { Network } from "../../calc/circuit/network";
import { polePair } from "../../calc/circuit/poles";
import {
  type CoilConductors,
  type Cylinder,
  cylinderGap,
  type RoundConductor,
} from "../../calc/coil/conductors";
import type { BurstGroup, BurstOutcome } from "../driveResults";
import type { ProfilePoint } from "../evaluation";
import type { SecondaryCircuit } from "../secondary/secondaryCircuit";
import type { Bursts } from "./burstStage";

/** Cycles over their time; null where there is not one. */
export function meanFrequency({ runningFrequency }: BurstResult): number | null {
  const time = runningFrequency.reduce((sum, { frequency }) => sum + 1 / frequency, 0);
  return time > 0 ? runningFrequency.length / time : null;
}

function outcome(result: BurstResult, network: Network): BurstOutcome {
  const frequency = meanFrequency(result);
  const poles = polePair(network);
  return {
    peakPrimaryCurrent: result.peakPrimaryCurrent.value,
    peakTopVoltage: result.peakTopVoltage.value,
    peakBaseCurrent: result.peakBaseCurrent,
    peakBankVoltage: result.peakBankVoltage,
    limitTrips: result.limitReachedAt,
    driveEnd: result.driveEnd,
    primaryEnd: result.primaryEnd,
    reservoirSag: result.reservoirSag,
    runningFrequency: frequency,
    runningPole: frequency !== null && poles ? runningPole(frequency, poles) : null,
    firstBeatMinimum: result.firstBeatMinimum?.time ?? null,
    energy: result.energy,
    frequencyByCycle: result.runningFrequency,
    gates: result.gates,
    waveform: result.waveform,
    envelope: {
      time: result.halfCycles.map(({ peakTime }) => peakTime),
      primaryCurrent: result.halfCycles.map(({ peakCurrent }) => peakCurrent),
      topVoltage: result.halfCycles.map(({ peakTopVoltage }) => peakTopVoltage),
    },
  };
}

/** The winding's voltage at a height, as a part of that at the top. */
function voltageAt(profile: readonly ProfilePoint[], height: number): number {
  const above = profile.findIndex((point) => point.height >= height);
  if (above === 0) return profile[0].voltage;
  if (above < 0) return profile[profile.length - 1].voltage;
  const [a, b] = [profile[above - 1], profile[above]];
  return a.voltage + ((height - a.height) / (b.height - a.height)) * (b.voltage - a.voltage);
}

/**
 * Cautiously, every turn is taken to stand at the whole voltage of the primary, or at that of its free end where
 * unused turns step it up, against the winding's at its height.
 */
function gapField(
  primary: readonly RoundConductor[],
  winding: Cylinder,
  profile: readonly ProfilePoint[],
  { peakBankVoltage, peakTopVoltage }: BurstOutcome,
  freeEndVoltage: number,
): number | null {
  const fields = primary.map((turn) => {
    const voltage =
      peakBankVoltage * Math.max(1, freeEndVoltage) + peakTopVoltage * voltageAt(profile, turn.centreHeight);
    return voltage / cylinderGap(turn, winding);
  });
  return fields.length > 0 && fields.every((field) => field > 0) ? Math.max(...fields) : null;
}

export function burstGroup(
  { loaded, unloaded }: Bursts,
  secondary: SecondaryCircuit,
  { primary, primaryEnds, winding }: Pick<CoilConductors, "primary" | "primaryEnds" | "winding">,
  freeEndVoltage: number,
): BurstGroup {
  const own = outcome(loaded.result, loaded.case.network);
  return {
    ...own,
    unloaded: outcome(unloaded.result, unloaded.case.network),
    windingGradient: secondary.maximumGradientPerVolt * own.peakTopVoltage,
    gapField: gapField([...primary, ...primaryEnds], winding, secondary.profile, own, freeEndVoltage),
  };
}
