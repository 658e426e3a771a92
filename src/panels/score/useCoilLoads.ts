import { useEffect } from "react";
import { useStore } from "zustand";
import { askLoads, loadStore } from "../../workbench/coilLoadSession";
import type { CoilDesigns, CoilLoads } from "../../workbench/scoreScheduling";

/** What bursts of these designs cost; null while that is worked out. */
export function useCoilLoads(designs: CoilDesigns): CoilLoads | null {
  useEffect(() => askLoads(designs), [designs]);
  const known = useStore(loadStore);
  const current = known.designs?.left === designs.left && known.designs?.right === designs.right;
  return current ? known.loads : null;
}
