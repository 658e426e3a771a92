import { useEvaluation } from "../../workbench/session/hooks";
import { LossBar } from "./LossBar";
import styles from "./LossBars.module.css";

const SECONDARY = [
  { name: "directCurrent", hatch: "solid" },
  { name: "skin", hatch: "rising" },
  { name: "proximity", hatch: "crossed" },
  { name: "allowance", hatch: "open" },
] as const;

const PRIMARY = [
  { name: "tube", hatch: "solid" },
  { name: "bank", hatch: "rising" },
  { name: "switches", hatch: "crossed" },
  { name: "allowance", hatch: "open" },
] as const;

/** The losses of each circuit at its fundamental. */
export function LossBars() {
  const solved = useEvaluation((evaluation) => evaluation.losses !== null);
  return (
    <section className={styles.losses} aria-label="Losses">
      <h3 className={styles.title}>Losses at the fundamental</h3>
      {solved ? (
        <>
          <LossBar circuit="secondary" parts={SECONDARY} />
          <LossBar circuit="primary" parts={PRIMARY} />
        </>
      ) : (
        <p className={styles.none}>
          The losses cannot be computed because a circuit has no solution; see the findings.
        </p>
      )}
    </section>
  );
}
