/** The load of a design's bursts by on-time, and the limits of its parts, for score and live keyboard. */
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

/** From the design's burst with its spark; null if there is no solution. */
export function coilLoad(design: Design): CoilLoad | null {
  const bursts = areSolvable(design, ["drive", "tank", "interrupter", "air"]) ? designBursts(design) : null;
  return bursts && loadStage(design, bursts.loaded.case);
}
