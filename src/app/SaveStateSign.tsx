import { useStore } from "zustand";
import { drafts } from "../ui/drafts";
import { Icon, type IconName } from "../ui/Icon";
import { useSession } from "../workbench/session/hooks";
import type { SaveState } from "../workbench/session/workbenchState";
import styles from "./Header.module.css";

const signs: Record<SaveState, { icon: IconName; word: string }> = {
  saved: { icon: "ok", word: "Saved" },
  kept: { icon: "ok", word: "Kept" },
  saving: { icon: "saving", word: "Saving" },
  unsaved: { icon: "saving", word: "Not saved yet" },
  failed: { icon: "error", word: "Not saved" },
};

const TYPED =
  "What is typed into a field is taken over, and saved, when the field is left or Enter is pressed.";

/** Whether what is on screen is kept in the browser, in a word. */
export function SaveStateSign() {
  const stored = useSession((session) => session.saveState);
  const saveMessage = useSession((session) => session.saveMessage);
  const typed = useStore(drafts, (all) => Object.keys(all).length > 0) && stored === "saved";
  const saveState = typed ? "unsaved" : stored;
  const message = typed ? TYPED : saveMessage;
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
