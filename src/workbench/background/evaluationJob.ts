import type { Design } from "../../design/design";
import { evaluateDrive, evaluateField } from "../../evaluation/evaluate";
import type { DriveEvaluation, FieldEvaluation } from "../../evaluation/evaluation";
import { solveCoil } from "../../evaluation/solvedCoil";
import { finiteDrive, finiteField } from "./finiteGroups";
import type { Tell } from "./protocol";

export interface EvaluationRequest {
  design: Design;
  /** turns, the tap with most energy into the spark; null if bursts have not been swept */
  mostEnergyTap?: number | null;
}

/** Evaluates a design: the field group as soon as it is there, then the drive group. */
export function evaluationJob(
  { design, mostEnergyTap }: EvaluationRequest,
  { partial }: Tell<FieldEvaluation>,
): DriveEvaluation {
  const coil = solveCoil(design);
  const field = evaluateField(design, mostEnergyTap, coil);
  partial(finiteField(field));
  return finiteDrive(field, evaluateDrive(design, finiteField(field), coil));
}
