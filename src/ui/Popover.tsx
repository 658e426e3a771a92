import { type ReactNode, useId, useRef, useState } from "react";
import { Contained } from "./Contained";
import styles from "./Popover.module.css";
import { Symbols } from "./Symbols";

interface PopoverProps {
  /** the popover's heading */
  title: string;
  /** the button's accessible name, where its content gives none */
  name?: string;
  className?: string;
  /** the button's content */
  mark: ReactNode;
  role: "note" | "dialog";
  children: (popover: PopoverState) => ReactNode;
}

export interface PopoverState {
  /** lets expensive content render only while it is open */
  open: boolean;
  close: () => void;
}

/** A popover beside its button; it closes on Escape or a press outside. */
export function Popover({ title, name, className, mark, role, children }: PopoverProps) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const popover = useRef<HTMLDivElement>(null);
  const [open, setOpen] = useState(false);
  const close = () => popover.current?.hidePopover?.();
  return (
    <>
      <button type="button" ref={button} className={className} popoverTarget={id} aria-label={name}>
        {mark}
      </button>
      <div
        id={id}
        ref={popover}
        popover="auto"
        role={role}
        aria-label={role === "dialog" ? title : undefined}
        className={styles.popover}
        onBeforeToggle={({ newState }) => setOpen(newState === "open")}
        onToggle={() => place(button.current, popover.current)}
      >
        <h3 className={styles.title}>
          <Symbols text={title} />
        </h3>
        <Contained what={`explanation “${title}”`}>
          <Content make={children} open={open} close={close} />
        </Contained>
      </div>
    </>
  );
}

function Content({ make, ...popover }: PopoverState & { make: (popover: PopoverState) => ReactNode }) {
  return make(popover);
}

const margin = 8;

/** Places the popover below its button, or above it if there is too little room, within the window. */
function place(mark: HTMLElement | null, popover: HTMLElement | null) {
  if (!mark || !popover) return;
  const at = mark.getBoundingClientRect();
  const size = popover.getBoundingClientRect();
  const left = Math.min(Math.max(margin, at.left - margin), window.innerWidth - size.width - margin);
  const below = at.bottom + margin;
  const fits = below + size.height < window.innerHeight;
  popover.style.left = `${left}px`;
  popover.style.top = `${fits ? below : Math.max(margin, at.top - size.height - margin)}px`;
}
