import type { ReactNode } from "react";
import styles from "./Figure.module.css";
import { Slip, type SlipState } from "./Slip";

interface FigureProps {
  caption: string;
  /** null shows a dash */
  number: string | null;
  unit?: string;
  /** one short line beneath */
  remark?: string;
  size?: "large" | "small";
  tone?: "plain" | "live" | "ok" | "warning" | "error";
  /** where the number comes from; it makes the number a button */
  origin?: Origin;
}

interface Origin {
  title: string;
  content: (slip: SlipState) => ReactNode;
}

/** One number that matters: a small caption above a large value and its unit, in a ruled cell. */
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
          <Slip
            title={origin.title}
            name={`${caption}: ${spoken}. Where it comes from`}
            className={styles.button}
            mark={value}
            role="dialog"
          >
            {origin.content}
          </Slip>
        ) : (
          value
        )}
        {remark && <span className={styles.remark}>{remark}</span>}
      </dd>
    </div>
  );
}
