import type { ReactNode } from "react";
import { Contained } from "../../ui/Contained";
import { Icon } from "../../ui/Icon";
import { usePreferences } from "../../workbench/session/preferences";
import styles from "./Panel.module.css";
import { PanelOpen } from "./PanelOpen";

interface PanelProps {
  title: string;
  /** whether it is open by default */
  open?: boolean;
  children: ReactNode;
}

/** A section of the form; while it is closed its fields stay mounted, so that drafts are kept. */
export function Panel({ title, open = false, children }: PanelProps) {
  const chosen = usePreferences((preferences) => preferences.panelsOpen[title]);
  const setPanelOpen = usePreferences((preferences) => preferences.setPanelOpen);
  const isOpen = chosen ?? open;
  return (
    <details
      className={styles.panel}
      open={isOpen}
      onToggle={(event) =>
        event.currentTarget.open !== isOpen && setPanelOpen(title, event.currentTarget.open)
      }
    >
      <summary className={styles.summary}>
        <h2 className={styles.title}>{title}</h2>
        <span className={styles.chevron}>
          <Icon name="chevron" size={14} />
        </span>
      </summary>
      <div className={styles.content}>
        <PanelOpen value={isOpen}>
          <Contained what={`panel “${title}”`}>{children}</Contained>
        </PanelOpen>
      </div>
    </details>
  );
}
