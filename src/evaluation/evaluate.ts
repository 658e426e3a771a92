/** Design → evaluation: the one road through all of it, in named, memoised stages. */
import { bankCapacitance } from "../calc/circuit/bankCapacitance";
import type { Network } from "../calc/circuit/network";
import type { Design } from "../design/design";
import { tankResult } from "./bank/bankStage";
import { burstGroup } from "./burst/burstOutcome";
import { type Bursts, burstStage } from "./burst/burstStage";
import type { BankResult } from "./driveResults";
import type { DriveEvaluation, Evaluation, FieldEvaluation, SecondaryResult } from "./evaluation";
import { findings } from "./findings/findings";
import { lossesResult } from "./losses/lossesStage";
import type { PrimaryCircuit } from "./primary/primaryStages";
import { loadedResonance, networkOf, sparkLoad } from "./response/coupledNetwork";
import { responseResult } from "./response/responseStage";
import { correctionsStage } from "./secondary/correctionsStage";
import type { SecondaryCircuit } from "./secondary/secondaryCircuit";
import { conductorsStage } from "./secondary/secondaryModes";
import { areSolvable } from "./solvable";
import { solve } from "./solved";
import { driveResult } from "./supply/driveStage";
import { breakoutVoltage, topLoadResult } from "./topLoad/topLoadStage";
import { mostEnergyTap } from "./tuning/energySweep";
import {
  resonanceAtTapStage,
  suggestionStage,
  targetStage,
  tuningCurveStage,
  tuningResult,
} from "./tuning/tuningStages";

function bankResult(design: Design, primary: PrimaryCircuit | null): BankResult | null {
  const { tank } = design;
  if (!areSolvable(design, ["tank"])) return null;
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
    resonancePrimaryShorted:
      coupling === null || Math.abs(coupling) >= 1 ? null : resonance / Math.sqrt(1 - coupling * coupling),
    overtones: overtones.map((mode) => mode.resonance),
    effectiveInductance: fundamental.inductance,
    effectiveCapacitance: fundamental.capacitance,
    profile: circuit.profile,
    qualityFactor: fundamental.qualityFactor,
    maximumGradientPerVolt: circuit.maximumGradientPerVolt,
    maximumGradient: breakoutVoltage === null ? null : circuit.maximumGradientPerVolt * breakoutVoltage,
  };
}

/**
 * What the numbers and the drawing show, within the frame.
 * @param knownTap turns, where bursts give the spark most energy; null while they are not swept
 */
export function evaluateField(design: Design, knownTap: number | null = null): FieldEvaluation {
  const { field, winding, modes, secondary, solution, mutuals, primary, coupling } = solve(design);
  const topLoad = topLoadResult(design, field, modes);
  const target = targetStage(design, secondary, resonanceAtTapStage(design, solution, knownTap));
  const suggestion = suggestionStage(design, solution, target);
  const curve = tuningCurveStage(design, solution, mutuals, secondary);
  return {
    secondary:
      secondary && winding && areSolvable(design, ["spark"])
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
    tank: bankResult(design, primary?.circuit ?? null),
    tuning: tuningResult(suggestion, target, primary?.circuit ?? null, curve),
    losses: lossesResult(secondary, primary?.circuit ?? null, design.corrections.lossAllowance),
  };
}

/** The coupled network, with or without the spark's load; null while a part of it has no solution. */
export function responseNetwork(design: Design, loaded: boolean): Network | null {
  const { secondary, primary, coupling } = solve(design);
  if (!primary || !secondary || !coupling || !areSolvable(design, ["spark"])) return null;
  const load = sparkLoad(design.spark, loaded ? design.spark.length : 0);
  return networkOf(primary.circuit, secondary, coupling.mutuals, load);
}

/** One burst with the design's spark and one without; null while a circuit has no solution. */
export function designBursts(design: Design): Bursts | null {
  const { field, modes, secondary, primary, coupling } = solve(design);
  const breakout = breakoutVoltage(topLoadResult(design, field, modes));
  return burstStage(design, primary?.circuit ?? null, secondary, coupling?.mutuals ?? null, breakout);
}

/** The burst, and what it asks of the parts. */
function burstResults(
  design: Design,
  field: FieldEvaluation,
): Pick<DriveEvaluation, "burst" | "tank" | "drive"> {
  const { secondary, primary } = solve(design);
  const bursts = designBursts(design);
  const { coil } = conductorsStage(design);
  const result = bursts?.loaded.result ?? null;
  const repeated = areSolvable(design, ["interrupter"]) ? result : null;
  const resonance = primary?.circuit.resonance ?? 0;
  return {
    burst:
      bursts && secondary && coil && burstGroup(bursts, secondary, coil, primary?.result.freeEndVoltage ?? 1),
    tank: field.tank && tankResult(design, field.tank, repeated, resonance),
    drive: areSolvable(design, ["drive", "interrupter"]) ? driveResult(design, result, resonance) : null,
  };
}

/** Response, burst and findings, by the next frame. */
export function evaluateDrive(design: Design, field: FieldEvaluation): DriveEvaluation {
  const { modes, winding } = solve(design);
  const [unloaded, loaded] = [responseNetwork(design, false), responseNetwork(design, true)];
  const drive = {
    response: unloaded && loaded ? responseResult(unloaded, loaded) : null,
    corrections: correctionsStage(design, modes, winding),
    ...burstResults(design, field),
  };
  return { ...drive, findings: findings(design, { ...field, ...drive }) };
}

/** Everything that is computed from a design; bursts are swept where the tuning aim asks for it. */
export function evaluate(design: Design): Evaluation {
  const field = evaluateField(design, mostEnergyTap(design));
  return { ...field, ...evaluateDrive(design, field) };
}
