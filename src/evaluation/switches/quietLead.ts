import { meanFrequency } from "../../calc/burst/burstResult";
import { leadTimeFor, type QuietLead, quietLead } from "../../calc/circuit/commutationAdvice";
import type { Design } from "../../design/design";
import { designBursts } from "../burst/burstStage";

/** Share of a cycle; a longer lead time would act on the next half cycle. */
const LONGEST = 0.25;

/**
 * Of the lead times that cover delay and dead time, so that no pair turns on late, the one with the least turn-off
 * current in the design's burst, searched over about sixteen whole bursts; null without a burst, if no lead time
 * covers them, or if the bridge runs at a fixed frequency.
 */
export function designQuietLead(design: Design): QuietLead | null {
  const bursts = designBursts(design);
  const { mode, delay, deadTime } = design.drive.commutation;
  const frequency = bursts && meanFrequency(bursts.loaded.result);
  if (!frequency || mode === "fixed frequency") return null;
  const [shortest, longest] = [leadTimeFor(delay + deadTime, frequency), LONGEST / frequency];
  if (shortest === null || shortest >= longest) return null;
  const { network, drive, options } = bursts.loaded.case;
  return quietLead(network, drive, { shortest, longest }, options);
}
