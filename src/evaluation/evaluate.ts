/** Design → evaluation: the one road through all of it, in named, memoised stages. */
import type { Design } from "../design/design";
import type { DriveEvaluation, Evaluation, FieldEvaluation } from "./evaluation";
import { findings } from "./findings";

/** What the numbers and the drawing show, within the frame. */
export function evaluateField(_design: Design): FieldEvaluation {
  return { secondary: null, topLoad: null, primary: null, coupling: null, tank: null, tuning: null };
}

/** Response and findings, by the next frame. */
export function evaluateDrive(design: Design, field: FieldEvaluation): DriveEvaluation {
  return { response: null, findings: findings(design, field) };
}

/** Everything that is computed from a design. */
export function evaluate(design: Design): Evaluation {
  const field = evaluateField(design);
  return { ...field, ...evaluateDrive(design, field) };
}
