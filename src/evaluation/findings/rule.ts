import type { Design } from "../../design/design";
import type { Judged } from "../evaluation";
import type { SolvedCoil } from "../solvedCoil";
import type { Finding } from "./finding";

/** The part of a finding that depends on the design. */
export type Judgement = Omit<Finding, "severity" | "code" | "sentence">;

/** One limit that a design is checked against. */
export interface Rule {
  /** kebab-case, never renamed */
  code: string;
  severity: Finding["severity"];
  /** as in `Finding` */
  sentence: string;
  judge: (design: Design, evaluation: Judged, coil: SolvedCoil) => Judgement[];
}

/** The finding of a rule and its judgement. */
export function findingOf({ severity, code, sentence }: Omit<Rule, "judge">, judgement: Judgement): Finding {
  return { severity, code, sentence, ...judgement };
}

/** Judges only if a more severe rule on the same subject finds nothing. */
export function unlessFound(graver: Rule, judge: Rule["judge"]): Rule["judge"] {
  return (design, evaluation, coil) =>
    graver.judge(design, evaluation, coil).length > 0 ? [] : judge(design, evaluation, coil);
}

/** The judgement as a list of one if the condition holds, otherwise an empty list. */
export function judgeWhen(condition: boolean, judgement: () => Judgement): Judgement[] {
  return condition ? [judgement()] : [];
}
