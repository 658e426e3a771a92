import type { Design } from "../../design/design";
import type { Judged } from "../evaluation";
import type { Finding } from "./finding";
import { RULES } from "./rules";

/** What every rule says of a design, errors first, in the order of the rules. */
export function findings(design: Design, evaluation: Judged): Finding[] {
  const said = RULES.flatMap(({ code, severity, judge }) =>
    judge(design, evaluation).map((judgement) => ({ severity, code, ...judgement })),
  );
  const rank = { error: 0, warning: 1, note: 2 };
  return said.sort((a, b) => rank[a.severity] - rank[b.severity]);
}
