import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef, useState } from "react";
import { Button } from "./Button";
import { Icon, type IconName } from "./Icon";
import styles from "./Menu.module.css";

export type MenuEntry =
  | { kind: "action"; label: string; icon?: IconName; keys?: string; disabled?: boolean; run: () => void }
  | { kind: "choice"; label: string; chosen: boolean; run: () => void }
  | { kind: "heading"; label: string };

interface MenuProps {
  label: ReactNode;
  name: string;
  entries: MenuEntry[];
}

/** A menu button as in the ARIA pattern: arrows, Home and End move, Escape closes and restores the focus. */
export function Menu({ label, name, entries }: MenuProps) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const root = useRef<HTMLDivElement>(null);
  const close = () => {
    setOpen(false);
    root.current?.querySelector<HTMLElement>("button")?.focus();
  };

  useEffect(() => {
    if (!open) return;
    items(root.current)[0]?.focus();
    const outside = (event: PointerEvent) => {
      if (!root.current?.contains(event.target as Node)) setOpen(false);
    };
    document.addEventListener("pointerdown", outside);
    return () => document.removeEventListener("pointerdown", outside);
  }, [open]);

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape") close();
    else if (event.key === "Tab") setOpen(false);
    else if (!moveFocus(root.current, event.key)) return;
    if (event.key !== "Tab") event.preventDefault();
    event.stopPropagation();
  };

  return (
    <div className={styles.menu} ref={root}>
      <Button
        kind="bare"
        aria-haspopup="menu"
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        aria-label={name}
        onClick={() => setOpen(!open)}
      >
        {label}
        <Icon name="chevron" size={12} />
      </Button>
      {open && (
        <div
          id={id}
          role="menu"
          aria-label={name}
          tabIndex={-1}
          className={styles.list}
          onKeyDown={onKeyDown}
        >
          {entries.map((entry, place) => (
            <MenuRow key={`${place} ${entry.label}`} entry={entry} close={close} />
          ))}
        </div>
      )}
    </div>
  );
}

function MenuRow({ entry, close }: { entry: MenuEntry; close: () => void }) {
  if (entry.kind === "heading") {
    return (
      <div role="presentation" className={styles.heading}>
        {entry.label}
      </div>
    );
  }
  const choice = entry.kind === "choice";
  return (
    <button
      type="button"
      role={choice ? "menuitemradio" : "menuitem"}
      aria-checked={choice ? entry.chosen : undefined}
      aria-disabled={entry.kind === "action" && entry.disabled}
      tabIndex={-1}
      className={styles.item}
      onClick={() => {
        if (entry.kind === "action" && entry.disabled) return;
        close();
        entry.run();
      }}
    >
      <span className={styles.sign}>
        {choice
          ? entry.chosen && <Icon name="ok" size={13} />
          : entry.icon && <Icon name={entry.icon} size={14} />}
      </span>
      {entry.label}
      {entry.kind === "action" && entry.keys && <kbd className={styles.keys}>{entry.keys}</kbd>}
    </button>
  );
}

function items(root: HTMLElement | null): HTMLElement[] {
  return [...(root?.querySelectorAll<HTMLElement>("[role^=menuitem]") ?? [])];
}

function moveFocus(root: HTMLElement | null, key: string): boolean {
  const all = items(root);
  const now = all.indexOf(document.activeElement as HTMLElement);
  const next = { ArrowDown: now + 1, ArrowUp: now - 1, Home: 0, End: -1 }[key];
  if (next === undefined) return false;
  all[(next + all.length) % all.length]?.focus();
  return true;
}
