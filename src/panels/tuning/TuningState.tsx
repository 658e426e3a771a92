import { Icon } from "../../ui/Icon";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";
import { useEvaluation, useUnitSystem } from "../../workbench/hooks";
import styles from "./TapBar.module.css";

/** Below this the two frequencies show the same digits. */
const nothing = 5e-5;

/** How far off the aim, and on which side, said in words. */
function offset(detuning: number | null, system: UnitSystem): string {
  if (detuning === null) return "The tap is not on the conductor";
  if (Math.abs(detuning) < nothing) return "Primary on the aim";
  const amount = formatQuantity(Math.abs(detuning), "percent", system, 2).text;
  return `Primary ${amount} ${detuning > 0 ? "above" : "below"} the aim`;
}

export function TuningState() {
  const tuning = useEvaluation((evaluation) => evaluation.tuning);
  const system = useUnitSystem();
  return (
    <div className={styles.state} role="status">
      {tuning === null ? (
        <span>Tuning –</span>
      ) : (
        <span className={tuning.tuned ? styles.tuned : styles.off}>
          <Icon name={tuning.tuned ? "ok" : "warning"} />
          {tuning.tuned ? "Tuned" : "Not tuned"}
        </span>
      )}
      <span className={styles.offset}>{tuning ? offset(tuning.detuning, system) : "Not computed yet"}</span>
    </div>
  );
}
