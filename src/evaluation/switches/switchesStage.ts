/** Switches, gates and commutation with the design's repeated bursts. */
import { type BurstResult, meanFrequency } from "../../calc/burst/burstResult";
import { commutationAdvice } from "../../calc/circuit/commutationAdvice";
import { gateDrive, switchLosses } from "../../calc/circuit/switchLosses";
import type { DesignParts } from "../../calc/design-parts";
import { finiteOrNull } from "../../calc/finiteOrNull";
import type { SwitchesResult, SwitchesUnderBurst } from "./switchesResults";

type Parts = Pick<DesignParts, "drive" | "interrupter">;

function underBurst(
  { drive, interrupter }: Parts,
  burst: BurstResult,
  resonance: number,
): SwitchesUnderBurst {
  const losses = switchLosses(drive, burst, interrupter.repetitionRate);
  const gate = gateDrive(drive, burst, interrupter.repetitionRate);
  const frequency = meanFrequency(burst) ?? resonance;
  const advice = commutationAdvice(drive, frequency, burst.peakPrimaryCurrent.value);
  const feedback = drive.commutation.mode === "primary current";
  return {
    junctionTemperature: losses.peakJunction,
    meanJunctionTemperature: losses.meanJunction,
    junctionRise: losses.rise.withinBurst,
    junctionMargin: losses.margin,
    switchPower: losses.power,
    conductionEnergy: losses.conductionEnergy,
    turnOffEnergy: losses.turnOffEnergy,
    switchPeakCurrent: losses.peakCurrent,
    turnOffCurrent: losses.turnOffCurrent,
    commutationCurrent: losses.commutationCurrent,
    gatePeakCurrent: finiteOrNull(gate.peakCurrent),
    gatePower: gate.power,
    leadAtZero: feedback ? advice.leadAtZero : null,
    leadAcrossDeadTime: feedback ? advice.leadAcrossDeadTime : null,
    longestDeadTime: feedback ? advice.longestDeadTime : null,
    turnOffAdvance: feedback ? advice.advance : null,
  };
}

const NOT_KNOWN: Record<keyof SwitchesUnderBurst, null> = {
  junctionTemperature: null,
  meanJunctionTemperature: null,
  junctionRise: null,
  junctionMargin: null,
  switchPower: null,
  conductionEnergy: null,
  turnOffEnergy: null,
  switchPeakCurrent: null,
  turnOffCurrent: null,
  commutationCurrent: null,
  gatePeakCurrent: null,
  gatePower: null,
  leadAtZero: null,
  leadAcrossDeadTime: null,
  longestDeadTime: null,
  turnOffAdvance: null,
};

/**
 * @param burst null if it cannot be computed
 * @param resonance Hz, of the primary; used if a burst has no full cycle
 */
export function switchesResult(parts: Parts, burst: BurstResult | null, resonance: number): SwitchesResult {
  return burst ? underBurst(parts, burst, resonance) : NOT_KNOWN;
}
