/** What a design's bursts cost by their on-time, and what its parts allow: read by score and live keyboard. */
import type { BurstCase } from "../../calc/burst/burstCase";
import type { CoilLoad } from "../../calc/music/coilLoad";
import { type LoadParts, loadOfBursts } from "../../calc/music/loadOfBursts";
import type { Design } from "../../design/design";
import { designBursts } from "../burst/burstStage";
import { areSolvable } from "../solvable";
import { stage } from "../stage";

const loadStage = stage(
  ({ tank, drive, interrupter, air }): LoadParts => ({ tank, drive, interrupter, air }),
  (parts, burstCase: BurstCase): CoilLoad | null => loadOfBursts(parts, burstCase),
);

/** From the design's own burst with its spark; null while it has none. */
export function coilLoad(design: Design): CoilLoad | null {
  const bursts = areSolvable(design, ["drive", "tank", "interrupter", "air"]) ? designBursts(design) : null;
  return bursts && loadStage(design, bursts.loaded.case);
}
