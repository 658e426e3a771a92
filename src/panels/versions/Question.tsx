import { Button } from "../../ui/Button";
import { Dialog } from "../../ui/Dialog";

interface QuestionProps {
  title: string;
  /** what will be gone */
  words: string;
  /** what the button says that does it */
  doing: string;
  onDo: () => void;
  onClose: () => void;
}

/** Asks before what cannot be taken back. */
export function Question({ title, words, doing, onDo, onClose }: QuestionProps) {
  const actions = (
    <>
      <Button onClick={onClose}>Keep</Button>
      <Button
        kind="filled"
        onClick={() => {
          onClose();
          onDo();
        }}
      >
        {doing}
      </Button>
    </>
  );
  return (
    <Dialog title={title} open onClose={onClose} actions={actions}>
      <p>{words}</p>
    </Dialog>
  );
}
