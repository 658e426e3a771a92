import styles from "./FindingList.module.css";
import { Icon } from "./Icon";

export type Severity = "error" | "warning" | "note";

export interface FindingRow {
  id: string;
  severity: Severity;
  sentence: string;
  where: string;
}

export const severityLabel: Record<Severity, string> = { error: "Error", warning: "Warning", note: "Note" };

/** Findings about the design, most severe first; severity is shown as icon and label, not by colour alone. */
export function FindingList({ rows, onGo }: { rows: FindingRow[]; onGo: (where: string) => void }) {
  return (
    <ul className={styles.list}>
      {rows.map((row) => (
        <li key={row.id}>
          <button
            type="button"
            className={`${styles.row} ${styles[row.severity]}`}
            onClick={() => onGo(row.where)}
          >
            <span className={styles.severity}>
              <Icon name={row.severity} />
              {severityLabel[row.severity]}
              <span className="visually-hidden">: </span>
            </span>
            <span>{row.sentence}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
