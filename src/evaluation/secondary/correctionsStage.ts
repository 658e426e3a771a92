/** The effect of each correction on the secondary's resonance, with the others as set. */

import type { SolvedModes } from "../../calc/circuit/secondaryCircuit";
import { formerShift } from "../../calc/coil/formerCorrection";
import {
  resonanceShift,
  type SectionInductance,
  sectionInductance,
  sectionInductanceAt,
} from "../../calc/coil/sectionInductance";
import { guarded } from "../solvable";
import { stage } from "../stage";
import type { CorrectionsResult } from "./secondaryResults";

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
      modes: SolvedModes | null,
      uniform: SectionInductance | null,
    ): CorrectionsResult | null => {
      if (!modes || !uniform) return null;
      const [{ current, resonance }] = modes.loaded;
      const inductance = (floor: boolean, moved: boolean): SectionInductance => {
        if (floor === floorConducts && moved === wireCurrent) return modes.inductance;
        const height = floor ? secondary.baseHeight : undefined;
        return moved
          ? sectionInductanceAt(uniform.winding, secondary, height, resonance)
          : sectionInductance(uniform.winding, height);
      };
      return {
        formerShift: formerShift(modes.loaded[0], secondary),
        floorShift: resonanceShift(inductance(false, wireCurrent), inductance(true, wireCurrent), current),
        wireCurrentShift: resonanceShift(
          inductance(floorConducts, false),
          inductance(floorConducts, true),
          current,
        ),
      };
    },
  ),
);
