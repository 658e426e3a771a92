import { useId, useRef } from "react";
import styles from "./Help.module.css";
import { Icon } from "./Icon";

export interface HelpText {
  what: string;
  measure: string;
  typical: string;
}

interface HelpProps {
  label: string;
  help: HelpText;
  /** the permitted span in words, where there is one */
  range?: string;
}

/** A mark beside a caption; pressed, it says what the field is, how to measure it and what is typical. */
export function Help({ label, help, range }: HelpProps) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const slip = useRef<HTMLDivElement>(null);
  return (
    <>
      <button
        type="button"
        ref={button}
        className={styles.mark}
        popoverTarget={id}
        aria-label={`About ${label}`}
      >
        <Icon name="help" size={13} />
      </button>
      <div
        id={id}
        ref={slip}
        popover="auto"
        role="note"
        className={styles.slip}
        onToggle={() => place(button.current, slip.current)}
      >
        <h3 className={styles.title}>{label}</h3>
        <p>{help.what}</p>
        <dl className={styles.rows}>
          <dt>To measure</dt>
          <dd>{help.measure}</dd>
          <dt>Typical</dt>
          <dd>{help.typical}</dd>
          {range && <dt>Range</dt>}
          {range && <dd>{range}</dd>}
        </dl>
      </div>
    </>
  );
}

const margin = 8;

/** Puts the slip under its mark, or above it where the room below is too small, within the window. */
function place(mark: HTMLElement | null, slip: HTMLElement | null) {
  if (!mark || !slip) return;
  const at = mark.getBoundingClientRect();
  const size = slip.getBoundingClientRect();
  const left = Math.min(Math.max(margin, at.left - margin), window.innerWidth - size.width - margin);
  const below = at.bottom + margin;
  const fits = below + size.height < window.innerHeight;
  slip.style.left = `${left}px`;
  slip.style.top = `${fits ? below : Math.max(margin, at.top - size.height - margin)}px`;
}
