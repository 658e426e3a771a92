/** Stages of the primary: solved once for all taps, then read at the tap. */
import {
  loopResistance,
  type PrimaryCircuit,
  primaryCircuitAt,
  primaryCircuitParts,
} from "../../calc/circuit/primaryCircuit";
import { seriesQualityFactor } from "../../calc/circuit/resonance";
import { type PrimarySolution, primaryAtTap, solvePrimary } from "../../calc/coil/primary";
import { conductorLength, primaryShape, turnPlaces } from "../../calc/coil/primaryGeometry";
import { guarded, PRIMARY_CIRCUIT, PRIMARY_SHAPE } from "../solvable";
import { stage } from "../stage";
import type { PrimaryResult } from "./primaryResults";

export const primarySolutionStage = guarded(
  [...PRIMARY_SHAPE, "primary.wallThickness"],
  null,
  stage(
    ({ primary, corrections }) => ({
      tube: { ...primaryShape(primary), wallThickness: primary.wallThickness },
      floorConducts: corrections.floorConducts,
    }),
    ({ tube, floorConducts }) => solvePrimary(tube, { floorConducts }),
  ),
);

export const primaryCircuitStage = guarded(
  [...PRIMARY_CIRCUIT, "primary.tap"],
  null,
  stage(
    (design) => ({ tap: design.primary.tap, parts: primaryCircuitParts(design) }),
    ({ tap, parts }, solution: PrimarySolution | null): PrimaryCircuit | null =>
      solution && primaryCircuitAt(solution, tap, parts),
  ),
);

/** The primary with its tap; null if either has no solution. */
export function primaryResult(
  solution: PrimarySolution | null,
  circuit: PrimaryCircuit | null,
): PrimaryResult | null {
  const full = solution && primaryAtTap(solution, solution.tube.turns);
  if (!full || !circuit) return null;
  const { tube } = solution;
  const { atTap, inductance, capacitance, resonance, resistance } = circuit;
  return {
    inductance: atTap.inductance,
    fullInductance: full.inductance,
    lowFrequencyInductance: atTap.lowFrequencyInductance,
    resonance,
    conductorLength: atTap.conductorLength,
    fullConductorLength: conductorLength(tube, tube.turns),
    turnRadii: turnPlaces(tube),
    freeEndVoltage: atTap.freeEndStepUp,
    acResistance: resistance.tube,
    qualityFactor: seriesQualityFactor(inductance, capacitance, loopResistance(resistance)),
  };
}
