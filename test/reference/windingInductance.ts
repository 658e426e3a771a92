import { SECTIONS } from "../../src/calc/coil/sectionInductance";
import {
  type RoundWireWinding,
  sectionInductanceMatrix,
  type WindingInductanceOptions,
} from "../../src/calc/field/windingInductance";

/** H of a whole winding: the sum of its sections' matrix, in the sections that the program takes. */
export function windingInductance(winding: RoundWireWinding, options: WindingInductanceOptions = {}): number {
  return sectionInductanceMatrix(winding, SECTIONS, options).reduce((sum, each) => sum + each, 0);
}
