import type { Design } from "../../design/design";
import type { Judged } from "../evaluation";
import type { SolvedCoil } from "../solvedCoil";
import type { Finding } from "./finding";
import { findingOf } from "./rule";
import { RULES } from "./rules";

/** The findings of all rules, errors first, otherwise in the order of the rules. */
export function findings(design: Design, evaluation: Judged, coil: SolvedCoil): Finding[] {
  const said = RULES.flatMap((rule) =>
    rule.judge(design, evaluation, coil).map((judgement) => findingOf(rule, judgement)),
  );
  const rank = { error: 0, warning: 1, note: 2 };
  return said.sort((a, b) => rank[a.severity] - rank[b.severity]);
}
