import { findingMessage } from "../evaluation/findings/findingMessage";
import { useEvaluation, useUnitSystem } from "../workbench/session/hooks";
import styles from "./BuildSheet.module.css";

/** Sentences that fit above the cautions of a full page. */
const MOST = 3;

function counted(count: number, word: string): string[] {
  return count === 0 ? [] : [`${count} ${word}${count === 1 ? "" : "s"}`];
}

/** What stands against building from this sheet: nothing is printed as if it were in order. */
export function SheetFindings() {
  const system = useUnitSystem();
  const against = useEvaluation(({ findings }) => findings.filter(({ severity }) => severity !== "note"));
  if (against.length === 0) return null;
  const errors = against.filter(({ severity }) => severity === "error").length;
  const counts = [...counted(errors, "error"), ...counted(against.length - errors, "warning")];
  const rest = against.length - MOST;
  return (
    <section className={styles.against} aria-label="Findings against this design">
      <strong>
        {counts.join(" and ")} against this design{errors > 0 && ": do not build from this sheet"}.
      </strong>
      <ul>
        {against.slice(0, MOST).map((finding) => (
          <li key={`${finding.code} ${finding.where}`}>{findingMessage(finding, system)}</li>
        ))}
        {rest > 0 && <li>And {rest} more: see the findings at the bench.</li>}
      </ul>
    </section>
  );
}
