/** Results of a design's bursts. */
import type { Bursts } from "../../calc/burst/burstCase";
import { type BurstResult, meanFrequency, runningPole } from "../../calc/burst/burstResult";
import type { Network } from "../../calc/circuit/network";
import { polePair } from "../../calc/circuit/poles";
import { gapField } from "../../calc/coil/gapField";
import { gradientAt } from "../../calc/coil/modeProfile";
import type { SolvedCoil } from "../solvedCoil";
import type { BurstGroup, BurstOutcome } from "./burstResults";

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

/** Results of a design's bursts; null if there are none. */
export function burstGroup(bursts: Bursts | null, coil: SolvedCoil): BurstGroup | null {
  const { secondary, conductors, primary } = coil;
  if (!bursts || !secondary || !conductors.coil) return null;
  const { loaded, unloaded } = bursts;
  const { primary: turns, primaryEnds, winding } = conductors.coil;
  const own = outcome(loaded.result, loaded.case.network);
  const peak = { primary: own.peakBankVoltage, top: own.peakTopVoltage };
  return {
    ...own,
    unloaded: outcome(unloaded.result, unloaded.case.network),
    windingGradient: gradientAt(secondary.maximumGradientPerVolt, own.peakTopVoltage),
    gapField: gapField(
      [...turns, ...primaryEnds],
      winding,
      secondary.profile,
      peak,
      primary?.atTap.freeEndStepUp ?? 1,
    ),
  };
}
