import { type ReactNode, useId, useRef, useState } from "react";
import { Contained } from "./Contained";
import styles from "./Slip.module.css";
import { Symbols } from "./Symbols";

interface SlipProps {
  /** the slip's heading */
  title: string;
  /** what the button is called, where its content does not say it */
  name?: string;
  className?: string;
  /** the button's content */
  mark: ReactNode;
  role: "note" | "dialog";
  children: (slip: SlipState) => ReactNode;
}

export interface SlipState {
  /** for content that is dear to make while nobody reads it */
  open: boolean;
  close: () => void;
}

/** A slip of paper beside what was pressed; it closes by Escape or a press elsewhere. */
export function Slip({ title, name, className, mark, role, children }: SlipProps) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const slip = useRef<HTMLDivElement>(null);
  const [open, setOpen] = useState(false);
  const close = () => slip.current?.hidePopover?.();
  return (
    <>
      <button type="button" ref={button} className={className} popoverTarget={id} aria-label={name}>
        {mark}
      </button>
      <div
        id={id}
        ref={slip}
        popover="auto"
        role={role}
        aria-label={role === "dialog" ? title : undefined}
        className={styles.slip}
        onBeforeToggle={({ newState }) => setOpen(newState === "open")}
        onToggle={() => place(button.current, slip.current)}
      >
        <h3 className={styles.title}>
          <Symbols text={title} />
        </h3>
        <Contained what={`slip “${title}”`}>
          <Content make={children} open={open} close={close} />
        </Contained>
      </div>
    </>
  );
}

function Content({ make, ...slip }: SlipState & { make: (slip: SlipState) => ReactNode }) {
  return make(slip);
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
