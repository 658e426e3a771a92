import { useEffect } from "react";
import { useStore } from "zustand";
import { loadsTask } from "../../workbench/background/coilLoadSession";
import type { CoilDesigns, CoilLoads } from "../../workbench/background/coilLoadsJob";

/** The loads of these designs' bursts; null while they are computed. */
export function useCoilLoads(designs: CoilDesigns): CoilLoads | null {
  useEffect(() => loadsTask.ask(designs), [designs]);
  const { result, request } = useStore(loadsTask.answer);
  const current = request?.left === designs.left && request?.right === designs.right;
  return current ? result : null;
}
