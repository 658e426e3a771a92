import { meanFrequency } from "../../calc/burst/burstResult";
import { leadTimeFor, type QuietLead, quietLead } from "../../calc/circuit/commutationAdvice";
import type { Design } from "../../design/design";
import { designBursts } from "../burst/burstStage";

/** Of a cycle: a longer lead sees the next half cycle. */
const LONGEST = 0.25;

/**
 * Of the leads that span delay and dead time, so that no pair comes on late, the one with which the design's burst
 * switches off least current, searched over some sixteen whole bursts; null without a burst, where nothing spans
 * them, or where the bridge runs at a fixed frequency and has no lead.
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
