import { type KeyboardEvent, type ReactNode, useId } from "react";
import { Contained } from "./Contained";
import styles from "./Tabs.module.css";

export interface Tab {
  id: string;
  label: string;
  content: ReactNode;
  /** stays mounted while hidden, so that drafts in its fields are not lost */
  keep?: boolean;
}

interface TabsProps {
  name: string;
  tabs: Tab[];
  chosen: string;
  onChoose: (id: string) => void;
}

/** Tabs as in the ARIA pattern with automatic activation: an arrow key moves the focus and selects the tab. */
export function Tabs({ name, tabs, chosen, onChoose }: TabsProps) {
  const base = useId();
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const now = tabs.findIndex((tab) => tab.id === chosen);
    const next = { ArrowRight: now + 1, ArrowLeft: now - 1, Home: 0, End: tabs.length - 1 }[event.key];
    if (next === undefined) return;
    event.preventDefault();
    const tab = tabs[(next + tabs.length) % tabs.length];
    onChoose(tab.id);
    document.getElementById(`${base}-${tab.id}-tab`)?.focus();
  };
  return (
    <div className={styles.tabs}>
      <div role="tablist" aria-label={name} className={styles.list} onKeyDown={onKeyDown}>
        {tabs.map((tab) => (
          <button
            key={tab.id}
            type="button"
            role="tab"
            id={`${base}-${tab.id}-tab`}
            aria-selected={tab.id === chosen}
            aria-controls={`${base}-${tab.id}`}
            tabIndex={tab.id === chosen ? 0 : -1}
            className={styles.tab}
            onClick={() => onChoose(tab.id)}
          >
            {tab.label}
          </button>
        ))}
      </div>
      {tabs.map((tab) => (
        <div
          key={tab.id}
          role="tabpanel"
          id={`${base}-${tab.id}`}
          aria-labelledby={`${base}-${tab.id}-tab`}
          hidden={tab.id !== chosen}
          className={styles.panel}
        >
          {(tab.keep || tab.id === chosen) && (
            <Contained what={`view “${tab.label}”`}>{tab.content}</Contained>
          )}
        </div>
      ))}
    </div>
  );
}
