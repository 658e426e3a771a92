import { useStore } from "zustand";
import { FollowedProgress } from "../../ui/FollowedProgress";
import { loadsTask } from "../../workbench/background/coilLoadSession";
import type { CoilDesigns } from "../../workbench/background/coilLoadsJob";
import { NotThere } from "../parts/NotThere";

/** In place of what bursts cost, while that is worked out or where it came to nothing. */
export function LoadsNotThere({ designs }: { designs: CoilDesigns }) {
  const computing = useStore(loadsTask.answer, (answer) => answer.computing);
  return (
    <>
      <NotThere what="what bursts cost" computing={computing} again={() => loadsTask.insist(designs)} />
      <FollowedProgress store={loadsTask.progress} label="What bursts cost" onCancel={loadsTask.cancel} />
    </>
  );
}
