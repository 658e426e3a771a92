import { useMemo, useState } from "react";
import type { Finding } from "../evaluation/findings/finding";
import { findingMessage } from "../evaluation/findings/findingMessage";
import { FindingList, type FindingRow, type Severity } from "../ui/FindingList";
import { Icon } from "../ui/Icon";
import { useEvaluation, useSession, useUnitSystem } from "../workbench/session/hooks";
import styles from "./FindingsDock.module.css";

const order: readonly Severity[] = ["error", "warning", "note"];

/** Most severe first; findings of the same severity keep their order. */
function inOrderOfSeverity(findings: readonly Finding[]): Finding[] {
  return [...findings].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
}

/** The number of findings of each severity, as text; without severities that do not occur. */
function findingCounts(findings: readonly Finding[]): { severity: Severity; text: string }[] {
  return order
    .map((severity) => ({
      severity,
      count: findings.filter((finding) => finding.severity === severity).length,
    }))
    .filter(({ count }) => count > 0)
    .map(({ severity, count }) => ({ severity, text: `${count} ${severity}${count === 1 ? "" : "s"}` }));
}

/** The findings along the lower edge: always the counts, and the sentences while it is open. */
export function FindingsDock({ onGo }: { onGo: (where: string) => void }) {
  const findings = useEvaluation((evaluation) => evaluation.findings);
  const system = useUnitSystem();
  const judged = useSession((session) => session.driveRevision > 0);
  const [open, setOpen] = useState(true);
  const rows = useMemo(
    () =>
      inOrderOfSeverity(findings).map(
        (finding, place): FindingRow => ({
          id: `${finding.code} ${finding.where} ${place}`,
          severity: finding.severity,
          sentence: findingMessage(finding, system),
          where: finding.where,
        }),
      ),
    [findings, system],
  );
  return (
    <div className={styles.dock}>
      <button type="button" className={styles.head} aria-expanded={open} onClick={() => setOpen(!open)}>
        <h2 className={styles.title}>Findings</h2>
        {rows.length === 0 && (
          <span className={judged ? styles.none : undefined}>
            {judged ? <Icon name="ok" /> : null} {judged ? "none" : "not checked yet"}
          </span>
        )}
        {findingCounts(findings).map(({ severity, text }) => (
          <span key={severity} className={`${styles.count} ${styles[severity as Severity]}`}>
            <Icon name={severity} />
            {text}
          </span>
        ))}
        <span className={open ? styles.chevronOpen : styles.chevron}>
          <Icon name="chevron" size={14} />
        </span>
      </button>
      {open && (
        <div className={styles.list}>
          {rows.length > 0 ? (
            <FindingList rows={rows} onGo={onGo} />
          ) : (
            <p className={styles.nothing}>
              {judged ? "Nothing needs attention." : "The design is being checked."}
            </p>
          )}
        </div>
      )}
    </div>
  );
}
