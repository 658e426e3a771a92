import { type QuietLead, quietLead } from "../calc/circuit/commutationAdvice";
import type { Design } from "../design/design";
import { designBursts } from "./evaluate";

/** Of a cycle: a longer lead sees the next half cycle. */
const LONGEST = 0.25;

/**
 * The lead time with which the design's burst switches off least current, searched over some sixteen whole
 * bursts; null without a burst, or where the bridge runs at a fixed frequency and has no lead.
 */
export function designQuietLead(design: Design): QuietLead | null {
  const bursts = designBursts(design);
  if (!bursts || design.drive.commutation.mode === "fixed frequency") return null;
  const { network, drive, options } = bursts.loaded.case;
  const [cycle] = bursts.loaded.result.runningFrequency;
  return cycle ? quietLead(network, drive, LONGEST / cycle.frequency, options) : null;
}
