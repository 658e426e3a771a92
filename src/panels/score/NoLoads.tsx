import { useStore } from "zustand";
import { FollowedProgress } from "../../ui/FollowedProgress";
import { loadsTask } from "../../workbench/background/coilLoadSession";
import type { CoilDesigns } from "../../workbench/background/coilLoadsJob";
import { NoResult } from "../parts/NoResult";

/** Shown in place of the load of the bursts while it is computed, or if that was cancelled or failed. */
export function NoLoads({ designs }: { designs: CoilDesigns }) {
  const computing = useStore(loadsTask.answer, (answer) => answer.computing);
  return (
    <>
      <NoResult what="the load of the bursts" computing={computing} again={() => loadsTask.insist(designs)} />
      <FollowedProgress store={loadsTask.progress} label="Load of the bursts" onCancel={loadsTask.cancel} />
    </>
  );
}
