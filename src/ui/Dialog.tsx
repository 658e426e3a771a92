import { type ReactNode, useEffect, useId, useRef } from "react";
import { Button } from "./Button";
import { Contained } from "./Contained";
import styles from "./Dialog.module.css";

interface DialogProps {
  title: string;
  open: boolean;
  onClose: () => void;
  /** a dialog that must be answered has no close button and ignores Escape */
  mustAnswer?: boolean;
  children: ReactNode;
  actions?: ReactNode;
}

/** The browser's own modal dialog, which traps the focus and restores it on closing. */
export function Dialog({ title, open, onClose, mustAnswer = false, children, actions }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    if (open && !dialog.current?.open) dialog.current?.showModal();
    if (!open) dialog.current?.close();
  }, [open]);
  return (
    <dialog
      ref={dialog}
      className={styles.dialog}
      aria-labelledby={titleId}
      onCancel={(event) => mustAnswer && event.preventDefault()}
      onClose={onClose}
    >
      {open && (
        <>
          <header className={styles.head}>
            <h2 id={titleId}>{title}</h2>
            {!mustAnswer && <Button kind="bare" icon="close" aria-label="Close" onClick={onClose} />}
          </header>
          <div className={styles.body}>
            <Contained what={`dialog “${title}”`}>{children}</Contained>
          </div>
          {actions && <footer className={styles.foot}>{actions}</footer>}
        </>
      )}
    </dialog>
  );
}
