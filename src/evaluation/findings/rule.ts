import type { Design } from "../../design/design";
import type { Judged } from "../evaluation";
import type { SolvedCoil } from "../solvedCoil";
import type { Finding } from "./finding";

/** What a rule says of a design, apart from what is the same each time. */
export type Judgement = Omit<Finding, "severity" | "code">;

/** Every limit is one small rule. */
export interface Rule {
  /** kebab-case, never renamed */
  code: string;
  severity: Finding["severity"];
  /**
   * the sentence, with {field}, {value} and {limit} filled in at the edge in the reader's units, and {ends} by
   * “begins” where the value lies below the limit
   */
  sentence: string;
  judge: (design: Design, evaluation: Judged, coil: SolvedCoil) => Judgement[];
}

/** What a rule says where a graver one about the same thing says nothing. */
export function unlessSaid(graver: Rule, judge: Rule["judge"]): Rule["judge"] {
  return (design, evaluation, coil) =>
    graver.judge(design, evaluation, coil).length > 0 ? [] : judge(design, evaluation, coil);
}

/** A judgement in a list of its own where the condition holds, else nothing. */
export function judgeWhen(condition: boolean, judgement: () => Judgement): Judgement[] {
  return condition ? [judgement()] : [];
}
