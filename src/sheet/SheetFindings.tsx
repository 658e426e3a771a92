import { findingMessage } from "../evaluation/findings/findingMessage";
import { useEvaluation, useUnitSystem } from "../workbench/session/hooks";
import styles from "./BuildSheet.module.css";

/** Findings that fit above the cautions on a full page. */
const MOST_LISTED = 3;

function counted(count: number, noun: string): string[] {
  return count === 0 ? [] : [`${count} ${noun}${count === 1 ? "" : "s"}`];
}

/** The errors and warnings of the design, so that a faulty design is never printed as if it were sound. */
export function SheetFindings() {
  const system = useUnitSystem();
  const against = useEvaluation(({ findings }) => findings.filter(({ severity }) => severity !== "note"));
  if (against.length === 0) return null;
  const errors = against.filter(({ severity }) => severity === "error").length;
  const counts = [...counted(errors, "error"), ...counted(against.length - errors, "warning")];
  const rest = against.length - MOST_LISTED;
  return (
    <section className={styles.against} aria-label="Findings against this design">
      <strong>
        {counts.join(" and ")} against this design{errors > 0 && ": do not build from this sheet"}.
      </strong>
      <ul>
        {against.slice(0, MOST_LISTED).map((finding) => (
          <li key={`${finding.code} ${finding.where}`}>{findingMessage(finding, system)}</li>
        ))}
        {rest > 0 && <li>And {rest} more: see the findings on screen.</li>}
      </ul>
    </section>
  );
}
