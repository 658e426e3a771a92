import { Icon } from "../../ui/Icon";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";
import { useEvaluation, useUnitSystem } from "../../workbench/hooks";
import styles from "./TapBar.module.css";

/** In tune or how far off, said in words. */
function offset(detuning: number, system: UnitSystem): string {
  const amount = formatQuantity(Math.abs(detuning), "percent", system, 2).text;
  return `${amount} ${detuning > 0 ? "above" : "below"} the aim`;
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
      <span className={styles.offset}>
        {tuning ? `Primary ${offset(tuning.detuning, system)}` : "Not computed yet"}
      </span>
    </div>
  );
}
