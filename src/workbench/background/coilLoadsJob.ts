/** The job of the worker that computes the load of the bursts. */
import type { CoilLoad } from "../../calc/music/coilLoad";
import type { Coil } from "../../calc/music/lane";
import type { Design } from "../../design/design";
import { coilLoad } from "../../evaluation/score/coilLoadStage";

export type CoilDesigns = Partial<Record<Coil, Design>>;
/** null if a design has no solution */
export type CoilLoads = Partial<Record<Coil, CoilLoad | null>>;

export function coilLoadsJob({ left, right }: CoilDesigns): CoilLoads {
  const loads: CoilLoads = {};
  if (left) loads.left = coilLoad(left);
  if (right) loads.right = right === left ? loads.left : coilLoad(right);
  return loads;
}
