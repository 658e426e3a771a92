import type { Rule } from "./rule";

/** Reported where results leave the evaluator: no value that is not finite may pass. */
export const resultNotFinite: Rule = {
  code: "result-not-finite",
  severity: "error",
  sentence: "{field} could not be computed as a finite number; it and all results of its group are left out.",
  judge: () => [],
};
