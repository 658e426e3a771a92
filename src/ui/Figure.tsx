import styles from "./Figure.module.css";

interface FigureProps {
  caption: string;
  /** null shows a dash */
  number: string | null;
  unit?: string;
  /** one short line beneath */
  remark?: string;
  size?: "large" | "small";
  tone?: "plain" | "live" | "ok" | "warning" | "error";
  title?: string;
}

/** One number that matters: a small caption above a large value and its unit, in a ruled cell. */
export function Figure({
  caption,
  number,
  unit,
  remark,
  size = "small",
  tone = "plain",
  title,
}: FigureProps) {
  return (
    <div className={`${styles.figure} ${styles[size]} ${styles[tone]}`} title={title}>
      <dt className={styles.caption}>{caption}</dt>
      <dd className={styles.value}>
        <span className={styles.number}>{number ?? "–"}</span>
        {number !== null && unit && <span className={styles.unit}>{unit}</span>}
        {remark && <span className={styles.remark}>{remark}</span>}
      </dd>
    </div>
  );
}
