import { workbench } from "../workbench/session/session";

/** Moves the tap as its marker is dragged; one drag is one step. */
export function placeTap(tap: number, phase: "begin" | "move" | "end" | "cancel"): void {
  if (phase === "begin") workbench.begin("move tap");
  else if (phase === "end") workbench.commit();
  else if (phase === "cancel") workbench.cancel();
  else
    workbench.change((design) => ({
      ...design,
      primary: { ...design.primary, tap: Math.min(Math.max(tap, 0.1), design.primary.turns) },
    }));
}
