import { Icon, type IconName } from "../ui/Icon";
import { useSession } from "../workbench/hooks";
import type { SaveState } from "../workbench/workbenchState";
import styles from "./Header.module.css";

const signs: Record<SaveState, { icon: IconName; word: string }> = {
  saved: { icon: "ok", word: "Saved" },
  kept: { icon: "ok", word: "Kept" },
  saving: { icon: "saving", word: "Saving" },
  unsaved: { icon: "saving", word: "Not saved yet" },
  failed: { icon: "error", word: "Not saved" },
};

/** Whether what is on screen is kept in the browser, in a word. */
export function SaveStateSign() {
  const saveState = useSession((session) => session.saveState);
  const message = useSession((session) => session.saveMessage);
  const { icon, word } = signs[saveState];
  return (
    <span
      role="status"
      title={message || undefined}
      className={`${styles.save} ${saveState === "failed" ? styles.trouble : ""}`}
    >
      <Icon name={icon} size={14} />
      <span className={styles.saveWord}>{word}</span>
    </span>
  );
}
