import { useEvaluation } from "../../workbench/session/hooks";
import { Results } from "../parts/Results";

const RINGING = [
  "response.beatFrequency",
  "response.firstMaximum",
  "response.lowerPoleQuality",
  "response.upperPoleQuality",
  "response.loadedLowerPoleQuality",
  "response.loadedUpperPoleQuality",
] as const;

function crossingIds(name: "zeroPhase" | "loadedZeroPhase", count: number): string[] {
  return Array.from({ length: count }, (_, index) => [
    `response.${name}.${index}.frequency`,
    `response.${name}.${index}.resistance`,
  ]).flat();
}

/** The results of the response: beat, pole Q and the frequencies at which a bridge can lock. */
export function ResponseResults() {
  const counts = useEvaluation(({ response }) => ({
    unloaded: response?.zeroPhase.length ?? 0,
    loaded: response?.loadedZeroPhase.length ?? 0,
  }));
  return (
    <section aria-label="Response results">
      <Results
        ids={[
          ...RINGING,
          ...crossingIds("zeroPhase", counts.unloaded),
          ...crossingIds("loadedZeroPhase", counts.loaded),
        ]}
      />
    </section>
  );
}
