/** The tap moved, wherever it is grasped: on the slider, the drawing, a chart, or by a button that proposes one. */
import type { TuningAim } from "../../calc/design-parts";
import type { Design } from "../../design/design";
import { workbench } from "./session";

/** Turns: a thousandth is about a millimetre of tube, finer than a clamp can be set. */
const DECIMALS = 3;

/** Turns below which nobody clamps: with none there is no primary. */
const LEAST = 0.1;

/** Turns, the least that a hand can set on a primary of so many turns. */
export function lowestTap(turns: number): number {
  return Math.min(LEAST, turns);
}

function withTap(design: Design, tap: number): Design {
  const { primary } = design;
  const within = Math.max(Number(tap.toFixed(DECIMALS)), LEAST);
  return { ...design, primary: { ...primary, tap: Math.min(within, primary.turns) } };
}

/** Moves the tap within a step that has begun. */
export function moveTap(tap: number): void {
  workbench.change((design) => withTap(design, tap));
}

/**
 * Puts a proposed tap into the open design as one step.
 * @param tuningAim what the tap was proposed for, where that is not the design's own aim
 */
export function applyTap(tap: number, label: string, tuningAim?: TuningAim): void {
  workbench.edit(label, (design) => ({
    ...withTap(design, tap),
    tuningAim: tuningAim ?? design.tuningAim,
  }));
}

/** Moves the tap as its marker is dragged; one drag is one step. */
export function dragTap(tap: number, phase: "begin" | "move" | "end" | "cancel"): void {
  if (phase === "begin") workbench.begin("move tap");
  else if (phase === "end") workbench.commit();
  else if (phase === "cancel") workbench.cancel();
  else moveTap(tap);
}
