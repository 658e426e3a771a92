/** The secondary as a circuit, and its results. */
import { loadedResonance, sparkLoad } from "../../calc/circuit/coupledNetwork";
import { shortedResonance } from "../../calc/circuit/resonance";
import {
  type SecondaryCircuit,
  type SolvedModes,
  secondaryCircuit,
} from "../../calc/circuit/secondaryCircuit";
import { gradientAt } from "../../calc/coil/modeProfile";
import type { DesignParts } from "../../calc/design-parts";
import type { CouplingResult } from "../coupling/couplingResults";
import { areSolvable, guarded } from "../solvable";
import { stage } from "../stage";
import type { TopLoadResult } from "../topLoad/topLoadResults";
import type { SecondaryResult } from "./secondaryResults";

export const secondaryCircuitStage = guarded(
  ["secondary.former", "secondary.windingTemperature", "secondary.measuredQ", "corrections"],
  null,
  stage(
    ({ secondary, corrections }) => ({ secondary, corrections }),
    ({ secondary, corrections }, modes: SolvedModes | null): SecondaryCircuit | null =>
      modes && secondaryCircuit(secondary, corrections, modes),
  ),
);

/** The secondary with spark, top load and the primary nearby; null if it has no solution. */
export function secondaryResult(
  design: DesignParts,
  modes: SolvedModes | null,
  circuit: SecondaryCircuit | null,
  topLoad: TopLoadResult | null,
  coupling: CouplingResult | null,
): SecondaryResult | null {
  if (!modes || !circuit || !areSolvable(design, ["spark"])) return null;
  const [{ resonance, inductance, capacitance, qualityFactor }, ...overtones] = circuit.modes;
  const { maximumGradientPerVolt } = circuit;
  return {
    inductance: circuit.inductance,
    wireLength: circuit.wireLength,
    wireMass: circuit.wireMass,
    dcResistance: circuit.dcResistance,
    acResistance: circuit.acResistance,
    pitch: modes.inductance.winding.pitch,
    bareResonance: circuit.bareResonance,
    resonance,
    loadedResonance: loadedResonance(circuit, sparkLoad(design.spark)),
    resonancePrimaryShorted: coupling && shortedResonance(resonance, coupling.circuit),
    overtones: overtones.map((mode) => mode.resonance),
    effectiveInductance: inductance,
    effectiveCapacitance: capacitance,
    profile: circuit.profile,
    qualityFactor,
    maximumGradientPerVolt,
    maximumGradient: topLoad && gradientAt(maximumGradientPerVolt, topLoad.breakoutVoltage),
  };
}
