import type { Design } from "../../design/design";
import type { Judged } from "../evaluation";
import type { SolvedCoil } from "../solvedCoil";
import type { Finding } from "./finding";

/** What a rule says of a design, apart from what is the same each time. */
export type Judgement = Omit<Finding, "severity" | "code" | "sentence">;

/** Every limit is one small rule. */
export interface Rule {
  /** kebab-case, never renamed */
  code: string;
  severity: Finding["severity"];
  /** as findings carry it */
  sentence: string;
  judge: (design: Design, evaluation: Judged, coil: SolvedCoil) => Judgement[];
}

/** A judgement with what its rule says each time. */
export function findingOf({ severity, code, sentence }: Omit<Rule, "judge">, judgement: Judgement): Finding {
  return { severity, code, sentence, ...judgement };
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
