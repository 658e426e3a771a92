import { whyNoEnergy } from "../../charts/noEnergy";
import { Icon } from "../../ui/Icon";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";
import {
  useDesign,
  useEnergySweep,
  useEvaluation,
  useSession,
  useUnitSystem,
} from "../../workbench/session/hooks";
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

/** Why the aim "most energy" has no frequency yet, or none at all. */
function useUnknownAim(): string {
  const { waiting, done } = useEnergySweep(({ sweeping, swept, stale }) => ({
    waiting: sweeping,
    done: swept && !stale,
  }));
  const reason = useDesign(whyNoEnergy);
  if (waiting) return "Sweeping bursts for the most energy …";
  return done ? reason : "Bursts not swept yet";
}

export function TuningState() {
  const tuning = useEvaluation((evaluation) => evaluation.tuning);
  const system = useUnitSystem();
  const unknown = useUnknownAim();
  const computed = useSession(({ fieldRevision, revision }) => fieldRevision === revision && revision > 0);
  const withoutTuning = computed ? "No solution; the findings say why" : "Not computed yet";
  if (tuning?.targetResonance === null)
    return (
      <div className={styles.state} role="status">
        <span>Tuning –</span>
        <span className={styles.offset}>{unknown}</span>
      </div>
    );
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
      <span className={styles.offset}>{tuning ? offset(tuning.detuning, system) : withoutTuning}</span>
    </div>
  );
}
