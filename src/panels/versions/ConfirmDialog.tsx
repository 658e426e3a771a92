import { Button } from "../../ui/Button";
import { Dialog } from "../../ui/Dialog";

interface ConfirmDialogProps {
  title: string;
  /** what will be lost */
  text: string;
  /** label of the confirming button */
  action: string;
  onConfirm: () => void;
  onClose: () => void;
}

/** Asks for confirmation before an action that cannot be undone. */
export function ConfirmDialog({ title, text, action, onConfirm, onClose }: ConfirmDialogProps) {
  const actions = (
    <>
      <Button onClick={onClose}>Cancel</Button>
      <Button
        kind="filled"
        onClick={() => {
          onClose();
          onConfirm();
        }}
      >
        {action}
      </Button>
    </>
  );
  return (
    <Dialog title={title} open onClose={onClose} actions={actions}>
      <p>{text}</p>
    </Dialog>
  );
}
