import type { Rule } from "./rule";

/** Judged where the evaluation itself ends without a result: nothing else can be said of such a design. */
export const evaluationFailed: Rule = {
  code: "evaluation-failed",
  severity: "error",
  sentence: "The design could not be evaluated, last with {field} changed: nothing of it is judged.",
  judge: () => [],
};
