import { Button } from "../ui/Button";
import { Dialog } from "../ui/Dialog";
import { Icon } from "../ui/Icon";
import styles from "./ImportRefusal.module.css";
import type { RefusedFile } from "./useImport";

/** Why a file was not opened: each fault as a sentence with its path. */
export function ImportRefusal({ refusal, onClose }: { refusal: RefusedFile | null; onClose: () => void }) {
  const faults = refusal?.faults ?? [];
  return (
    <Dialog
      title="This file was not opened"
      open={refusal !== null}
      onClose={onClose}
      actions={
        <Button kind="filled" onClick={onClose}>
          Close
        </Button>
      }
    >
      <p>“{refusal?.name}” cannot be used as it is. Nothing was changed.</p>
      <ul className={styles.faults}>
        {faults.map((fault) => (
          <li key={`${fault.path} ${fault.message}`}>
            <Icon name="error" />
            <span>
              {fault.path && <code>{fault.path}</code>} {fault.message}
            </span>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
