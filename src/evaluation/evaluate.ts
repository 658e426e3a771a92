/** Design → evaluation: the one road through all of it, in named, memoised stages. */
import { bankCapacitance } from "../calc/circuit/bankCapacitance";
import type { Network } from "../calc/circuit/network";
import type { Design } from "../design/design";
import type { DriveEvaluation, Evaluation, FieldEvaluation, SecondaryResult, TankResult } from "./evaluation";
import { findings } from "./findings";
import { correctionsStage } from "./stages/corrections";
import { lossesResult } from "./stages/losses";
import { loadedResonance, networkOf, sparkLoad } from "./stages/network";
import {
  couplingStage,
  type PrimaryCircuit,
  primaryResultStage,
  primarySolutionStage,
  sectionMutualsStage,
} from "./stages/primary";
import { responseResult } from "./stages/response";
import {
  conductorsStage,
  electricFieldStage,
  modesStage,
  windingInductanceStage,
} from "./stages/secondaryField";
import { type SecondaryCircuit, secondaryCircuitStage } from "./stages/secondaryResult";
import { topLoadResult } from "./stages/topLoad";
import { suggestionStage, targetStage, tuningCurveStage, tuningResult } from "./stages/tuning";

/** Results of the stages that more than one group reads. */
function solve(design: Design) {
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

function tankResult({ tank }: Design, primary: PrimaryCircuit | null): TankResult {
  const capacitance = bankCapacitance(tank);
  return {
    capacitance,
    peakVoltageRating: tank.unit.dcVoltage * tank.unitsInSeries,
    units: tank.unitsInSeries * tank.strings,
    characteristicImpedance: primary ? Math.sqrt(primary.inductance / capacitance) : null,
  };
}

function secondaryResult(
  { spark }: Design,
  circuit: SecondaryCircuit,
  pitch: number,
  breakoutVoltage: number | null,
  coupling: number | null,
): SecondaryResult {
  const [fundamental, ...overtones] = circuit.modes;
  const { resonance } = fundamental;
  return {
    inductance: circuit.inductance,
    wireLength: circuit.wireLength,
    wireMass: circuit.wireMass,
    dcResistance: circuit.dcResistance,
    acResistance: circuit.acResistance,
    pitch,
    bareResonance: circuit.bareResonance,
    resonance,
    loadedResonance: loadedResonance(circuit, sparkLoad(spark, spark.length)),
    resonancePrimaryShorted: coupling === null ? null : resonance / Math.sqrt(1 - coupling * coupling),
    overtones: overtones.map((mode) => mode.resonance),
    effectiveInductance: fundamental.inductance,
    effectiveCapacitance: fundamental.capacitance,
    profile: circuit.profile,
    qualityFactor: fundamental.qualityFactor,
    maximumGradientPerVolt: circuit.maximumGradientPerVolt,
    maximumGradient: breakoutVoltage === null ? null : circuit.maximumGradientPerVolt * breakoutVoltage,
  };
}

/** What the numbers and the drawing show, within the frame. */
export function evaluateField(design: Design): FieldEvaluation {
  const { field, winding, modes, secondary, solution, mutuals, primary, coupling } = solve(design);
  const topLoad = topLoadResult(design, field, modes);
  const target = targetStage(design, secondary);
  const suggestion = suggestionStage(design, solution, target);
  const curve = tuningCurveStage(design, solution, mutuals, secondary);
  return {
    secondary:
      secondary && winding
        ? secondaryResult(
            design,
            secondary,
            winding.winding.pitch,
            topLoad?.breakoutVoltage ?? null,
            coupling?.result.circuit ?? null,
          )
        : null,
    topLoad,
    primary: primary?.result ?? null,
    coupling: coupling?.result ?? null,
    tank: tankResult(design, primary?.circuit ?? null),
    tuning: tuningResult(suggestion, target, primary?.circuit ?? null, curve),
    losses: lossesResult(secondary, primary?.circuit ?? null, design.corrections.lossAllowance),
  };
}

/** The coupled network, with or without the spark's load; null while a part of it has no solution. */
export function responseNetwork(design: Design, loaded: boolean): Network | null {
  const { secondary, primary, coupling } = solve(design);
  if (!primary || !secondary || !coupling) return null;
  const load = sparkLoad(design.spark, loaded ? design.spark.length : 0);
  return networkOf(primary.circuit, secondary, coupling.mutuals, load);
}

/** Response and findings, by the next frame. */
export function evaluateDrive(design: Design, field: FieldEvaluation): DriveEvaluation {
  const { modes, winding } = solve(design);
  const [unloaded, loaded] = [responseNetwork(design, false), responseNetwork(design, true)];
  return {
    response: unloaded && loaded ? responseResult(unloaded, loaded) : null,
    corrections: correctionsStage(design, modes, winding),
    findings: findings(design, field),
  };
}

/** Everything that is computed from a design. */
export function evaluate(design: Design): Evaluation {
  const field = evaluateField(design);
  return { ...field, ...evaluateDrive(design, field) };
}
