/** What is asked of the worker that works out what bursts cost; the same where there is no worker. */
import { coilLoad } from "../evaluation/burstCosts";
import type { CoilDesigns, CoilLoads } from "./scoreScheduling";

export function coilLoads({ left, right }: CoilDesigns): CoilLoads {
  const loads: CoilLoads = {};
  if (left) loads.left = coilLoad(left);
  if (right) loads.right = right === left ? loads.left : coilLoad(right);
  return loads;
}
