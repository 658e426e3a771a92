import type { Rule } from "./rule";

/** Reported when the evaluation itself fails: nothing else is known about such a design. */
export const evaluationFailed: Rule = {
  code: "evaluation-failed",
  severity: "error",
  sentence:
    "The design could not be evaluated; the last field changed was {field}. No limits have been checked.",
  judge: () => [],
};
