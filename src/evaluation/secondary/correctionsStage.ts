/** What each correction of the model does to the secondary's resonance, the others as they stand. */
import type { CorrectionsResult } from "../evaluation";
import { guarded } from "../solvable";
import { stage } from "../stage";
import { formerFactor } from "./secondaryCircuit";
import { atFrequency, type Modes, type WindingInductance, windingInductanceOf } from "./secondaryModes";

/** IᵀLI: twice the magnetic energy. */
function doubleEnergy({ matrix }: WindingInductance, current: readonly number[]): number {
  let sum = 0;
  current.forEach((a, row) => {
    current.forEach((b, column) => {
      sum += a * b * matrix[row * current.length + column];
    });
  });
  return sum;
}

/**
 * Relative change of the resonance from one inductance to another, by Rayleigh's quotient with the
 * current held: its error is of second order in the change.
 * Source: Rayleigh, Theory of Sound, art. 88.
 */
function shift(off: WindingInductance, on: WindingInductance, current: readonly number[]): number {
  return Math.sqrt(doubleEnergy(off, current) / doubleEnergy(on, current)) - 1;
}

export const correctionsStage = guarded(
  ["secondary", "corrections"],
  null,
  stage(
    ({ secondary, corrections: { floorConducts, wireCurrent } }) => ({
      secondary,
      floorConducts,
      wireCurrent,
    }),
    (
      { secondary, floorConducts, wireCurrent },
      modes: Modes | null,
      uniform: WindingInductance | null,
    ): CorrectionsResult | null => {
      if (!modes || !uniform) return null;
      const [{ current, resonance }] = modes.loaded;
      const inductance = (floor: boolean, moved: boolean): WindingInductance => {
        if (floor === floorConducts && moved === wireCurrent) return modes.inductance;
        const height = floor ? secondary.baseHeight : undefined;
        return moved
          ? atFrequency(uniform.winding, secondary, height, resonance)
          : windingInductanceOf(uniform.winding, height);
      };
      return {
        formerShift: formerFactor(modes.loaded[0], secondary, { former: true }) - 1,
        floorShift: shift(inductance(false, wireCurrent), inductance(true, wireCurrent), current),
        wireCurrentShift: shift(inductance(floorConducts, false), inductance(floorConducts, true), current),
      };
    },
  ),
);
