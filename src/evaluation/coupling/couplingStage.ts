/** Stages of the coupling: mutual inductances of primary and secondary, for all taps and at the tap. */
import type { PrimaryCircuit } from "../../calc/circuit/primaryCircuit";
import { couplings, type MutualsAtTap, mutualsAtTap } from "../../calc/circuit/primaryMutuals";
import type { SecondaryCircuit } from "../../calc/circuit/secondaryCircuit";
import type { PrimarySolution } from "../../calc/coil/primary";
import { roundWireWinding, SECTIONS } from "../../calc/coil/sectionInductance";
import { type SectionMutuals, sectionMutuals } from "../../calc/coil/sectionMutuals";
import { guarded, SECONDARY_SHAPE } from "../solvable";
import { stage } from "../stage";
import type { CouplingResult } from "./couplingResults";

export const sectionMutualsStage = guarded(
  SECONDARY_SHAPE,
  null,
  stage(
    (design) => ({ ...roundWireWinding(design.secondary), baseHeight: design.secondary.baseHeight }),
    (winding, solution: PrimarySolution | null): SectionMutuals | null =>
      solution ? sectionMutuals(solution, winding, SECTIONS) : null,
  ),
);

export interface Coupling {
  mutuals: MutualsAtTap;
  result: CouplingResult;
}

export const couplingStage = stage(
  (design) => ({ tap: design.primary.tap }),
  (
    { tap },
    table: SectionMutuals | null,
    secondary: SecondaryCircuit | null,
    primary: PrimaryCircuit | null,
  ): Coupling | null => {
    const mutuals = table && secondary && mutualsAtTap(table, secondary, tap);
    if (!mutuals || !secondary || !primary) return null;
    const result = { ...couplings(mutuals, primary, secondary), mutualInductance: mutuals.uniform };
    return { mutuals, result };
  },
);
