/** What stands in place of figures where a design could not be evaluated. */

import type { Evaluation } from "../../evaluation/evaluation";
import { evaluationFailed } from "../../evaluation/findings/evaluationFailed";
import { findingOf } from "../../evaluation/findings/rule";
import { fieldAt } from "../../fields/allFields";
import { openDesignOf } from "../session/showEdits";
import { EMPTY_EVALUATION, type WorkbenchState } from "../session/workbenchState";

/** What every coil has, where the change itself is at no field. */
const ANY_FIELD = "secondary.turns";

/** Paths of the numbers, words and gaps at which two plain values differ. */
function changedPaths(before: unknown, after: unknown, path = ""): string[] {
  if (before === after) return [];
  if (typeof before !== "object" || typeof after !== "object" || !before || !after) return [path];
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...keys].flatMap((key) =>
    changedPaths(
      (before as Record<string, unknown>)[key],
      (after as Record<string, unknown>)[key],
      path ? `${path}.${key}` : key,
    ),
  );
}

/** The field that the last edit of the open design changed first. */
function lastChangedField({ history, gesture }: WorkbenchState): string {
  const before = gesture?.before ?? history.past.at(-1)?.state;
  const present = openDesignOf(history.present);
  const earlier = before?.designs[history.present.open];
  const changed = earlier ? changedPaths(earlier, present) : [];
  return changed.find((path) => fieldAt(path)) ?? ANY_FIELD;
}

/** No figures, and one error finding at the field that was changed last. */
export function failedEvaluation(state: WorkbenchState): Evaluation {
  const field = lastChangedField(state);
  const finding = findingOf(evaluationFailed, {
    where: field,
    quantity: field,
    value: null,
    limit: null,
    remedy: "take back the last change, or bring the marked field into its range",
  });
  return { ...EMPTY_EVALUATION, findings: [finding] };
}
