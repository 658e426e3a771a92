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

/** What the burst comes to. */
export function BurstResults() {
  return (
    <section aria-label="Burst in figures">
      <Results ids={KEY_FIGURES} />
    </section>
  );
}
