import { workbench } from "./session";

/** Turns: a thousandth is about a millimetre of tube, finer than a clamp can be set. */
const DECIMALS = 3;

/** Puts a proposed tap into the open design as one step. */
export function takeTap(tap: number, label: string): void {
  workbench.edit(label, (design) => {
    const { primary } = design;
    return {
      ...design,
      primary: { ...primary, tap: Math.min(Number(tap.toFixed(DECIMALS)), primary.turns) },
    };
  });
}
