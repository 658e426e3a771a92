import { useEffect } from "react";
import { useStore } from "zustand";
import { loadsTask } from "../../workbench/background/coilLoadSession";
import type { CoilDesigns, CoilLoads } from "../../workbench/background/coilLoadsJob";

/** What bursts of these designs cost; null while that is worked out. */
export function useCoilLoads(designs: CoilDesigns): CoilLoads | null {
  useEffect(() => loadsTask.ask(designs), [designs]);
  const { result, request } = useStore(loadsTask.answer);
  const current = request?.left === designs.left && request?.right === designs.right;
  return current ? result : null;
}
