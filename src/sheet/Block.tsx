import type { ReactNode } from "react";
import styles from "./BuildSheet.module.css";

/** A ruled block of the sheet with a heading. */
export function Block({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section className={styles.block}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}
