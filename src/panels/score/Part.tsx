import { type ReactNode, useState } from "react";
import { Contained } from "../../ui/Contained";
import styles from "./Part.module.css";

/** A collapsible part of the score's view; its content is rendered only while it is open. */
export function Part({ title, children }: { title: string; children: ReactNode }) {
  const [open, setOpen] = useState(false);
  return (
    <details className={styles.part} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className={styles.summary}>
        <h2 className={styles.heading}>{title}</h2>
      </summary>
      {open && <Contained what={`part “${title}”`}>{children}</Contained>}
    </details>
  );
}
