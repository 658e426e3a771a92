import { type ReactNode, useState } from "react";
import { Contained } from "../../ui/Contained";
import styles from "./Part.module.css";

/** A part of the score's view under its heading; nothing in it is made until it is opened. */
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
