/** Computes the evaluation of a design, in named, memoised stages. */
import type { Design } from "../design/design";
import { bankResult, tankResult } from "./bank/bankStage";
import { burstGroup } from "./burst/burstOutcome";
import { designBursts } from "./burst/burstStage";
import { currentLimitResult } from "./currentLimit/currentLimitStage";
import type { DriveEvaluation, Evaluation, FieldEvaluation } from "./evaluation";
import { findings } from "./findings/findings";
import { lossesResult } from "./losses/lossesStage";
import { primaryResult } from "./primary/primaryStages";
import { designResponse } from "./response/responseStage";
import { correctionsStage } from "./secondary/correctionsStage";
import { secondaryResult } from "./secondary/secondaryStage";
import { areSolvable } from "./solvable";
import { type SolvedCoil, solveCoil } from "./solvedCoil";
import { supplyResult } from "./supply/supplyStage";
import { switchesResult } from "./switches/switchesStage";
import { topLoadResult } from "./topLoad/topLoadStage";
import { mostEnergyTap } from "./tuning/energySweepStage";
import { tuningResult } from "./tuning/tuningStages";

/**
 * The results that numbers and drawing show, computed within a frame.
 * @param knownTap turns, the tap with most energy into the spark; null if bursts have not been swept
 * @param coil the design's, solved
 */
export function evaluateField(
  design: Design,
  knownTap: number | null = null,
  coil: SolvedCoil = solveCoil(design),
): FieldEvaluation {
  const { field, modes, secondary, solution, primary } = coil;
  const coupling = coil.coupling?.result ?? null;
  const topLoad = topLoadResult(design, field, modes);
  return {
    secondary: secondaryResult(design, modes, secondary, topLoad, coupling),
    topLoad,
    primary: primaryResult(solution, primary),
    coupling,
    tank: bankResult(design, primary),
    tuning: tuningResult(design, coil, knownTap),
    losses: lossesResult(secondary, primary, design.corrections.lossAllowance),
  };
}

/** Response, burst and findings, computed by the next frame. */
export function evaluateDrive(
  design: Design,
  field: FieldEvaluation,
  coil: SolvedCoil = solveCoil(design),
): DriveEvaluation {
  const bursts = designBursts(design, coil);
  const burst = bursts?.loaded.result ?? null;
  const resonance = coil.primary?.resonance ?? 0;
  const drive = {
    response: designResponse(design, coil),
    corrections: correctionsStage(design, coil.modes, coil.winding),
    burst: burstGroup(bursts, coil),
    tank: tankResult(design, field.tank, burst, resonance),
    drive: areSolvable(design, ["drive", "interrupter"])
      ? {
          ...supplyResult(design, burst),
          ...switchesResult(design, burst, resonance),
          ...currentLimitResult(design, burst, resonance),
        }
      : null,
  };
  return { ...drive, findings: findings(design, { ...field, ...drive }, coil) };
}

/** All results of a design; bursts are swept if the tuning aim needs it. */
export function evaluate(design: Design): Evaluation {
  const coil = solveCoil(design);
  const field = evaluateField(design, mostEnergyTap(design), coil);
  return { ...field, ...evaluateDrive(design, field, coil) };
}
