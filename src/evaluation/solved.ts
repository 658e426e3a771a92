import type { DesignParts } from "../calc/design-parts";
import {
  couplingStage,
  primaryResultStage,
  primarySolutionStage,
  sectionMutualsStage,
} from "./primary/primaryStages";
import { secondaryCircuitStage } from "./secondary/secondaryCircuit";
import {
  conductorsStage,
  electricFieldStage,
  modesStage,
  windingInductanceStage,
} from "./secondary/secondaryModes";

/** Results of the stages that more than one group reads. */
export function solve(design: DesignParts) {
  const field = electricFieldStage(design, conductorsStage(design));
  const winding = windingInductanceStage(design);
  const modes = modesStage(design, field, winding);
  const secondary = secondaryCircuitStage(design, field, modes);
  const solution = primarySolutionStage(design);
  const mutuals = sectionMutualsStage(design, solution);
  const primary = primaryResultStage(design, solution);
  const coupling = couplingStage(design, mutuals, secondary, primary);
  return { field, winding, modes, secondary, solution, mutuals, primary, coupling };
}
