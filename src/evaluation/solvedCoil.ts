/** The solved fields and circuits of a coil, from which all results are read. */
import type { PrimaryCircuit } from "../calc/circuit/primaryCircuit";
import type { SecondaryCircuit, SolvedModes } from "../calc/circuit/secondaryCircuit";
import type { ElectricField } from "../calc/coil/electricField";
import type { PrimarySolution } from "../calc/coil/primary";
import type { SectionInductance } from "../calc/coil/sectionInductance";
import type { SectionMutuals } from "../calc/coil/sectionMutuals";
import type { DesignParts } from "../calc/design-parts";
import { type Coupling, couplingStage, sectionMutualsStage } from "./coupling/couplingStage";
import { primaryCircuitStage, primarySolutionStage } from "./primary/primaryStages";
import {
  type Conductors,
  conductorsStage,
  electricFieldStage,
  modesStage,
  windingInductanceStage,
} from "./secondary/fieldStages";
import { secondaryCircuitStage } from "./secondary/secondaryStage";

/** Each part is null if it has no solution. */
export interface SolvedCoil {
  conductors: Conductors;
  field: ElectricField | null;
  /** at low frequency */
  winding: SectionInductance | null;
  modes: SolvedModes | null;
  secondary: SecondaryCircuit | null;
  /** of the primary, for all taps */
  solution: PrimarySolution | null;
  /** of primary and secondary, for all taps */
  mutuals: SectionMutuals | null;
  /** at the design's tap */
  primary: PrimaryCircuit | null;
  coupling: Coupling | null;
}

/** Solves the coil, stage by stage. */
export function solveCoil(design: DesignParts): SolvedCoil {
  const conductors = conductorsStage(design);
  const field = electricFieldStage(design, conductors);
  const winding = windingInductanceStage(design);
  const modes = modesStage(design, field, winding);
  const secondary = secondaryCircuitStage(design, modes);
  const solution = primarySolutionStage(design);
  const mutuals = sectionMutualsStage(design, solution);
  const primary = primaryCircuitStage(design, solution);
  const coupling = couplingStage(design, mutuals, secondary, primary);
  return { conductors, field, winding, modes, secondary, solution, mutuals, primary, coupling };
}
