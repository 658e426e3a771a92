import type { Rule } from "./rule";

/** Judged where results leave the evaluator, after all stages: no stage may hand on what is not finite. */
export const resultNotFinite: Rule = {
  code: "result-not-finite",
  severity: "error",
  sentence: "{field} could not be computed as a finite number and is left out, with all results beside it.",
  judge: () => [],
};
