/** The evaluation that is shown if a design could not be evaluated. */

import type { Evaluation } from "../../evaluation/evaluation";
import { evaluationFailed } from "../../evaluation/findings/evaluationFailed";
import { findingOf } from "../../evaluation/findings/rule";
import { fieldAt } from "../../fields/allFields";
import { openDesignOf } from "../session/showEdits";
import { EMPTY_EVALUATION, type WorkbenchState } from "../session/workbenchState";

/** A field of every coil, if the change affects no field. */
const FALLBACK_FIELD = "secondary.turns";

/** Paths at which two plain values differ. */
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

/** The first field that the last edit of the open design changed. */
function lastChangedField({ history, gesture }: WorkbenchState): string {
  const before = gesture?.before ?? history.past.at(-1)?.state;
  const present = openDesignOf(history.present);
  const earlier = before?.designs[history.present.open];
  const changed = earlier ? changedPaths(earlier, present) : [];
  return changed.find((path) => fieldAt(path)) ?? FALLBACK_FIELD;
}

/** No results, and one error finding at the field that was changed last. */
export function failedEvaluation(state: WorkbenchState): Evaluation {
  const field = lastChangedField(state);
  const finding = findingOf(evaluationFailed, {
    where: field,
    quantity: field,
    value: null,
    limit: null,
    remedy: "undo the last change, or bring the marked field into its range",
  });
  return { ...EMPTY_EVALUATION, findings: [finding] };
}
