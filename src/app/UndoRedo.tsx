import { Button } from "../ui/Button";
import { useSession } from "../workbench/session/hooks";
import { workbench } from "../workbench/session/session";
import styles from "./Header.module.css";

/** The undo and redo buttons, with the name of the last step. */
export function UndoRedo() {
  const { undoLabel, redoLabel, canUndo, canRedo } = useSession((session) => session);
  const undo = undoLabel ?? "Nothing to undo";
  const redo = redoLabel ?? "Nothing to redo";
  return (
    <>
      <Button
        kind="bare"
        icon="undo"
        aria-label={undo}
        title={undo}
        disabled={!canUndo}
        onClick={() => workbench.undo()}
      >
        {undoLabel && <span className={`${styles.step} ${styles.wideOnly}`}>{undoLabel}</span>}
      </Button>
      <Button
        kind="bare"
        icon="redo"
        aria-label={redo}
        title={redo}
        disabled={!canRedo}
        onClick={() => workbench.redo()}
      />
    </>
  );
}
