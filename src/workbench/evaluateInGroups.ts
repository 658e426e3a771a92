import { evaluateDrive, evaluateField } from "../evaluation/evaluate";
import type { EvaluationRequest, EvaluatorReply } from "./evaluator";
import { finiteDrive, finiteField } from "./finiteGroups";

/**
 * Evaluates a design and hands over each group as soon as it is there. Whatever is thrown becomes
 * a failure with a sentence: a wrong design never takes the evaluator down.
 */
export function evaluateInGroups(
  { revision, design, mostEnergyTap }: EvaluationRequest,
  reply: (reply: EvaluatorReply) => void,
): void {
  try {
    const field = evaluateField(design, mostEnergyTap);
    reply({ group: "field", revision, field: finiteField(field) });
    reply({ group: "drive", revision, drive: finiteDrive(field, evaluateDrive(design, finiteField(field))) });
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    reply({
      group: "failure",
      revision,
      sentence: `This design could not be computed (${reason}). Take back the last change, or change another field.`,
    });
  }
}
