/** Moving the tap, by the slider, the drawing, a chart or the button of a proposal. */
import type { TuningAim } from "../../calc/design-parts";
import type { Design } from "../../design/design";
import { workbench } from "./session";

/** Of a turn: a thousandth is about a millimetre of tube, finer than a clamp can be set. */
const DECIMALS = 3;

/** Turns, the lowest tap: without any turns there is no primary. */
const LOWEST = 0.1;

/** Turns, the lowest tap that can be set on a primary of so many turns. */
export function lowestTap(turns: number): number {
  return Math.min(LOWEST, turns);
}

function withTap(design: Design, tap: number): Design {
  const { primary } = design;
  const within = Math.max(Number(tap.toFixed(DECIMALS)), LOWEST);
  return { ...design, primary: { ...primary, tap: Math.min(within, primary.turns) } };
}

/** Moves the tap within a running gesture. */
export function moveTap(tap: number): void {
  workbench.change((design) => withTap(design, tap));
}

/**
 * Uses a proposed tap in the open design, in one step.
 * @param tuningAim the aim for which the tap was proposed, if it is not the design's own
 */
export function applyTap(tap: number, label: string, tuningAim?: TuningAim): void {
  workbench.edit(label, (design) => ({
    ...withTap(design, tap),
    tuningAim: tuningAim ?? design.tuningAim,
  }));
}

/** Moves the tap with its marker; one drag is one step. */
export function dragTap(tap: number, phase: "begin" | "move" | "end" | "cancel"): void {
  if (phase === "begin") workbench.begin("move tap");
  else if (phase === "end") workbench.commit();
  else if (phase === "cancel") workbench.cancel();
  else moveTap(tap);
}
