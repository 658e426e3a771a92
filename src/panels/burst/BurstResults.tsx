import { Results } from "../parts/Results";

const KEY_FIGURES = [
  "burst.peakPrimaryCurrent",
  "burst.peakTopVoltage",
  "burst.peakBankVoltage",
  "burst.peakBaseCurrent",
  "burst.limitTrips",
  "burst.firstBeatMinimum",
  "burst.runningFrequency",
  "burst.reservoirSag",
  "burst.energy.spark",
] as const;

/** The key results of the burst. */
export function BurstResults() {
  return (
    <section aria-label="Burst results">
      <Results ids={KEY_FIGURES} />
    </section>
  );
}
