import type { TuningAim } from "../../calc/design-parts";
import { workbench } from "./session";

/** Turns: a thousandth is about a millimetre of tube, finer than a clamp can be set. */
const DECIMALS = 3;

/**
 * Puts a proposed tap into the open design as one step.
 * @param tuningAim what the tap was proposed for, where that is not the design's own aim
 */
export function takeTap(tap: number, label: string, tuningAim?: TuningAim): void {
  workbench.edit(label, (design) => {
    const { primary } = design;
    return {
      ...design,
      tuningAim: tuningAim ?? design.tuningAim,
      primary: { ...primary, tap: Math.min(Number(tap.toFixed(DECIMALS)), primary.turns) },
    };
  });
}
