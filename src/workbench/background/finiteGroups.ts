/** Removes values that are not finite from the evaluator's replies. */
import type { DriveEvaluation, FieldEvaluation } from "../../evaluation/evaluation";
import type { Finding } from "../../evaluation/findings/finding";
import { resultNotFinite } from "../../evaluation/findings/resultNotFinite";
import { findingOf } from "../../evaluation/findings/rule";

/** Whether every number in plain data, at any depth, is finite. */
export function isFiniteThroughout(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return true;
  return Object.values(value).every(isFiniteThroughout);
}

/** Replaces each group with a number that is not finite by null. */
export function finiteField(field: FieldEvaluation): FieldEvaluation {
  const entries = Object.entries(field).map(([name, group]) => [
    name,
    isFiniteThroughout(group) ? group : null,
  ]);
  return Object.fromEntries(entries) as FieldEvaluation;
}

/** For each group, the result that represents it, and the field to check first. */
const REPRESENTATIVES: Record<string, { quantity: string; where: string }> = {
  secondary: { quantity: "secondary.resonance", where: "secondary.turns" },
  topLoad: { quantity: "topLoad.capacitance", where: "topLoad.surfaceFactor" },
  primary: { quantity: "primary.inductance", where: "primary.turns" },
  coupling: { quantity: "coupling.atResonance", where: "primary.innerRadius" },
  tank: { quantity: "tank.capacitance", where: "tank.unit.capacitance" },
  tuning: { quantity: "tuning.suggestedTap", where: "primary.tap" },
  losses: { quantity: "losses.secondary.total", where: "corrections.lossAllowance" },
  corrections: { quantity: "corrections.formerShift", where: "secondary.formerPermittivity" },
  burst: { quantity: "burst.peakPrimaryCurrent", where: "interrupter.onTime" },
  drive: { quantity: "drive.averagePower", where: "drive.supply.mainsVoltage" },
  response: { quantity: "response.lowerPole", where: "primary.tap" },
};

function notFinite(group: string): Finding {
  return findingOf(resultNotFinite, {
    ...REPRESENTATIVES[group],
    value: null,
    limit: null,
    remedy: "undo the last change, or bring the marked fields into their ranges",
  });
}

function finiteFinding(finding: Finding): Finding {
  const finite = (value: number | null) => (value !== null && Number.isFinite(value) ? value : null);
  return { ...finding, value: finite(finding.value), limit: finite(finding.limit) };
}

/**
 * The drive group without values that are not finite, and one error finding for each group of either
 * reply that had to be dropped.
 */
export function finiteDrive(field: FieldEvaluation, drive: DriveEvaluation): DriveEvaluation {
  const { findings, ...groups } = drive;
  const broken = [...Object.entries(field), ...Object.entries(groups)]
    .filter(([, group]) => !isFiniteThroughout(group))
    .map(([name]) => name);
  const dropped = [...new Set(broken)].map(notFinite);
  const kept = Object.entries(groups).map(([name, group]) => [
    name,
    isFiniteThroughout(group) ? group : null,
  ]);
  return {
    ...Object.fromEntries(kept),
    findings: [...dropped, ...findings.map(finiteFinding)],
  } as DriveEvaluation;
}
