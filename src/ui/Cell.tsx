import type { ReactNode } from "react";
import styles from "./Field.module.css";
import type { Severity } from "./FindingList";
import { severityLabel } from "./FindingList";
import { Help, type HelpText } from "./Help";
import { Icon } from "./Icon";

/** One sentence below a field; its severity is shown as icon and label. */
export interface Remark {
  severity: Severity;
  sentence: string;
}

export interface CellProps {
  /** id of the control inside, for its label and its description */
  id: string;
  label: string;
  help?: HelpText;
  /** the permitted range in words, shown with the help */
  range?: string;
  remarks?: readonly Remark[];
  /** spans the whole width of the block */
  wide?: boolean;
  /** buttons below the remarks that resolve them */
  actions?: ReactNode;
  children: ReactNode;
}

/** One ruled cell of a title block: a small caption above its value, remarks below. */
export function Cell({ id, label, help, range, remarks = [], wide = false, actions, children }: CellProps) {
  const worst = remarks.find((remark) => remark.severity === "error") ?? remarks[0];
  return (
    <div className={`${styles.cell} ${wide ? styles.wide : ""} ${worst ? styles[worst.severity] : ""}`}>
      <div className={styles.head}>
        <label htmlFor={id} className={styles.caption}>
          {label}
        </label>
        {help && <Help label={label} help={help} range={range} />}
      </div>
      {children}
      <div id={`${id}-remarks`} aria-live="polite" className={styles.remarks}>
        {remarks.map((remark) => (
          <p key={remark.sentence} className={`${styles.remark} ${styles[remark.severity]}`}>
            <Icon name={remark.severity} size={13} />
            <span>
              <strong>{severityLabel[remark.severity]}.</strong> {remark.sentence}
            </span>
          </p>
        ))}
      </div>
      {actions}
    </div>
  );
}
