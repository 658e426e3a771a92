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

/** Below this detuning the two frequencies show the same digits. */
const NEGLIGIBLE = 5e-5;

/** The detuning in words. */
function offset(detuning: number | null, system: UnitSystem): string {
  if (detuning === null) return "The tap is not on the conductor";
  if (Math.abs(detuning) < NEGLIGIBLE) return "Primary at the target";
  const amount = formatQuantity(Math.abs(detuning), "percent", system, 2).text;
  return `Primary ${amount} ${detuning > 0 ? "above" : "below"} the target`;
}

/** Why the aim "most energy" has no target frequency. */
function useMissingTargetReason(): string {
  const { waiting, done } = useEnergySweep(({ sweeping, swept, stale }) => ({
    waiting: sweeping,
    done: swept && !stale,
  }));
  const reason = useDesign(whyNoEnergy);
  if (waiting) return "Sweeping bursts for the most energy …";
  return done ? reason : "Sweep of bursts not computed yet";
}

export function TuningState() {
  const tuning = useEvaluation((evaluation) => evaluation.tuning);
  const system = useUnitSystem();
  const missingTargetReason = useMissingTargetReason();
  const computed = useSession(({ fieldRevision, revision }) => fieldRevision === revision && revision > 0);
  const withoutTuning = computed ? "No solution; see the findings" : "Not computed yet";
  if (tuning?.targetResonance === null)
    return (
      <div className={styles.state} role="status">
        <span>Tuning –</span>
        <span className={styles.offset}>{missingTargetReason}</span>
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
