/** The guard at the evaluator's edge: what is not finite never reaches the screen. */
import type { DriveEvaluation, FieldEvaluation } from "../evaluation/evaluation";
import type { Finding } from "../evaluation/finding";

/** Whether every number in plain data, however deep, is finite. */
export function isFiniteThroughout(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return true;
  return Object.values(value).every(isFiniteThroughout);
}

/** Replaces each group that holds a number that is not finite by null. */
export function finiteField(field: FieldEvaluation): FieldEvaluation {
  const entries = Object.entries(field).map(([name, group]) => [
    name,
    isFiniteThroughout(group) ? group : null,
  ]);
  return Object.fromEntries(entries) as FieldEvaluation;
}

function notFinite(group: string): Finding {
  return {
    severity: "error",
    code: "result-not-finite",
    where: group,
    quantity: group,
    value: null,
    limit: null,
    remedy: "take back the last change, or bring the marked fields into their ranges",
  };
}

function finiteFinding(finding: Finding): Finding {
  const finite = (value: number | null) => (value !== null && Number.isFinite(value) ? value : null);
  return { ...finding, value: finite(finding.value), limit: finite(finding.limit) };
}

/**
 * The drive group with what is not finite taken out, and one error finding for each group of either
 * reply that had to be dropped.
 */
export function finiteDrive(field: FieldEvaluation, drive: DriveEvaluation): DriveEvaluation {
  const { findings, ...groups } = drive;
  const dropped = Object.entries({ ...field, ...groups })
    .filter(([, group]) => !isFiniteThroughout(group))
    .map(([name]) => notFinite(name));
  const kept = Object.entries(groups).map(([name, group]) => [
    name,
    isFiniteThroughout(group) ? group : null,
  ]);
  return {
    ...Object.fromEntries(kept),
    findings: [...dropped, ...findings.map(finiteFinding)],
  } as DriveEvaluation;
}
