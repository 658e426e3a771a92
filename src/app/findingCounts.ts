import type { Finding } from "../evaluation/findings/finding";

type Severity = Finding["severity"];

const order: readonly Severity[] = ["error", "warning", "note"];

/** Gravest first; findings of the same severity keep their order. */
export function inOrderOfSeverity(findings: readonly Finding[]): Finding[] {
  return [...findings].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
}

/** How many of each severity there are, in words; what there is none of is left out. */
export function findingCounts(findings: readonly Finding[]): { severity: Severity; text: string }[] {
  return order
    .map((severity) => ({
      severity,
      count: findings.filter((finding) => finding.severity === severity).length,
    }))
    .filter(({ count }) => count > 0)
    .map(({ severity, count }) => ({ severity, text: `${count} ${severity}${count === 1 ? "" : "s"}` }));
}
