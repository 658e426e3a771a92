import type { ReactNode } from "react";
import styles from "./Figure.module.css";
import { Popover, type PopoverState } from "./Popover";

interface FigureProps {
  caption: string;
  /** null shows a dash */
  number: string | null;
  unit?: string;
  /** one short line below */
  remark?: string;
  size?: "large" | "small";
  tone?: "plain" | "live" | "ok" | "warning" | "error";
  /** how the number was computed; makes the number a button */
  origin?: Origin;
}

interface Origin {
  title: string;
  content: (popover: PopoverState) => ReactNode;
}

/** One key figure: a small caption above a large value and its unit, in a ruled cell. */
export function Figure({
  caption,
  number,
  unit,
  remark,
  size = "small",
  tone = "plain",
  origin,
}: FigureProps) {
  const value = (
    <>
      <span className={styles.number}>{number ?? "–"}</span>
      {number !== null && unit && <span className={styles.unit}> {unit}</span>}
    </>
  );
  const spoken = number === null ? "–" : [number, unit].filter(Boolean).join(" ");
  return (
    <div className={`${styles.figure} ${styles[size]} ${styles[tone]}`}>
      <dt className={styles.caption}>{caption}</dt>
      <dd className={styles.value}>
        {origin ? (
          <Popover
            title={origin.title}
            name={`${caption}: ${spoken}. Where it comes from`}
            className={styles.button}
            mark={value}
            role="dialog"
          >
            {origin.content}
          </Popover>
        ) : (
          value
        )}
        {remark && <span className={styles.remark}>{remark}</span>}
      </dd>
    </div>
  );
}
