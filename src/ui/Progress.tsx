import { useEffect, useState } from "react";
import { Button } from "./Button";
import styles from "./Progress.module.css";

/** ms; shorter tasks show no progress */
const WORTH_SHOWING = 500;

interface ProgressProps {
  /** the task, as in “Sweep of bursts” */
  label: string;
  /** 0 … 1; null if unknown */
  value: number | null;
  onCancel: () => void;
  /** ms before anything is shown */
  after?: number;
}

/** The progress of a long task, with a button to cancel it. */
export function Progress({ label, value, onCancel, after = WORTH_SHOWING }: ProgressProps) {
  const [shown, setShown] = useState(after === 0);
  useEffect(() => {
    const timer = setTimeout(() => setShown(true), after);
    return () => clearTimeout(timer);
  }, [after]);
  if (!shown) return null;
  return (
    <div className={styles.progress}>
      <span className={styles.label}>{label} …</span>
      <progress className={styles.bar} aria-label={`${label} under way`} value={value ?? undefined} />
      {value !== null && <span className={styles.part}>{Math.floor(100 * value)} %</span>}
      <Button onClick={onCancel} aria-label={`Cancel: ${label}`}>
        Cancel
      </Button>
    </div>
  );
}
