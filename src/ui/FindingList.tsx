import styles from "./FindingList.module.css";
import { Icon } from "./Icon";

export type Severity = "error" | "warning" | "note";

export interface FindingRow {
  id: string;
  severity: Severity;
  sentence: string;
  where: string;
}

export const severityWord: Record<Severity, string> = { error: "Error", warning: "Warning", note: "Note" };

/** Sentences about the design, gravest first; severity is a shape and a word, colour only helps. */
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
              {severityWord[row.severity]}
              <span className="visually-hidden">: </span>
            </span>
            <span>{row.sentence}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
