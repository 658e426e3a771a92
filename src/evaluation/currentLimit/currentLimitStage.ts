/** Current transformer and comparator, at rest and with the design's repeated bursts. */
import { type BurstResult, meanFrequency, rmsOfBursts } from "../../calc/burst/burstResult";
import { currentSense, hardestFluxDensity, proposeSense } from "../../calc/circuit/currentTransformer";
import type { DesignParts } from "../../calc/design-parts";
import { finiteOrNull } from "../../calc/finiteOrNull";
import type { CurrentLimitResult, SenseAtRest, SenseUnderBurst } from "./currentLimitResults";

type Parts = Pick<DesignParts, "drive" | "interrupter">;

/** V at the limit in a proposal if no comparator level is entered: half of a 5 V supply. */
const COMPARATOR_VOLTAGE = 2.5;

function atRest({ drive: { currentTransformer, overCurrentLimit } }: Parts): SenseAtRest {
  const { ratio, voltage } = currentSense(currentTransformer, overCurrentLimit, 0, 1);
  return {
    transformerRatio: ratio,
    limitVoltageAtComparator: voltage,
    senseProposal: proposeSense(overCurrentLimit, currentTransformer.comparatorVoltage ?? COMPARATOR_VOLTAGE),
  };
}

function underBurst({ drive, interrupter }: Parts, burst: BurstResult, resonance: number): SenseUnderBurst {
  const { currentTransformer, overCurrentLimit } = drive;
  const rms = rmsOfBursts(burst.squareCurrentTime, interrupter.repetitionRate);
  const frequency = meanFrequency(burst) ?? resonance;
  const peak = burst.peakPrimaryCurrent.value;
  const { voltage, burdenPower } = currentSense(currentTransformer, peak, rms, frequency);
  return {
    peakVoltageAtComparator: voltage,
    burdenPower,
    coreFluxDensity: finiteOrNull(
      hardestFluxDensity(currentTransformer, [peak, overCurrentLimit], frequency),
    ),
  };
}

const NOT_KNOWN: Record<keyof SenseUnderBurst, null> = {
  peakVoltageAtComparator: null,
  burdenPower: null,
  coreFluxDensity: null,
};

/**
 * @param burst null if it cannot be computed; the results at rest do not need it
 * @param resonance Hz, of the primary; used if a burst has no full cycle
 */
export function currentLimitResult(
  parts: Parts,
  burst: BurstResult | null,
  resonance: number,
): CurrentLimitResult {
  return { ...atRest(parts), ...(burst ? underBurst(parts, burst, resonance) : NOT_KNOWN) };
}
