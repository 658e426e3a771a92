import { cautions, limitsSentence, practiceSentence } from "../design/cautions";
import { Button } from "../ui/Button";
import { Dialog } from "../ui/Dialog";
import { Icon } from "../ui/Icon";
import styles from "./CautionsDialog.module.css";

interface CautionsDialogProps {
  open: boolean;
  /** true at the first start; later the cautions can be read again and closed */
  mustAcknowledge: boolean;
  onAcknowledge: () => void;
}

export function CautionsDialog({ open, mustAcknowledge, onAcknowledge }: CautionsDialogProps) {
  return (
    <Dialog
      title="Before you switch anything on"
      open={open}
      mustAnswer={mustAcknowledge}
      onClose={() => !mustAcknowledge && onAcknowledge()}
      actions={
        <Button kind="filled" onClick={onAcknowledge}>
          {mustAcknowledge ? "I have read and understood this" : "Close"}
        </Button>
      }
    >
      <p className={styles.lead}>A coil of this kind can kill its builder and injure spectators.</p>
      <ul className={styles.list}>
        {cautions.map((caution) => (
          <li key={caution.code}>
            <Icon name="caution" />
            <p>
              <strong>{caution.title}.</strong> {caution.sentence}
            </p>
          </li>
        ))}
      </ul>
      <p className={styles.practice}>{practiceSentence}</p>
      <p className={styles.practice}>{limitsSentence}</p>
    </Dialog>
  );
}
