import type { ReactNode } from "react";
import { useSession } from "../workbench/session/hooks";
import styles from "./App.module.css";

/** Disables its controls while the session is read-only; a notice gives the reason. */
export function Editable({ children }: { children: ReactNode }) {
  const readOnly = useSession((session) => session.readOnly !== null);
  return (
    <fieldset className={styles.editable} disabled={readOnly}>
      {children}
    </fieldset>
  );
}
