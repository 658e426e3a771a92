import type { ReactNode } from "react";
import { useSession } from "../workbench/session/hooks";
import styles from "./App.module.css";

/** What can be changed, unless the session says why nothing can; the reason stands among the notices. */
export function Editable({ children }: { children: ReactNode }) {
  const readOnly = useSession((session) => session.readOnly !== null);
  return (
    <fieldset className={styles.editable} disabled={readOnly}>
      {children}
    </fieldset>
  );
}
