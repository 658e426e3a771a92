import { useStore } from "zustand";
import { drafts } from "../ui/drafts";
import { Icon, type IconName } from "../ui/Icon";
import { useSession } from "../workbench/session/hooks";
import type { SaveState } from "../workbench/session/workbenchState";
import styles from "./Header.module.css";

const signs: Record<SaveState, { icon: IconName; label: string }> = {
  saved: { icon: "ok", label: "Saved" },
  kept: { icon: "ok", label: "Kept" },
  saving: { icon: "saving", label: "Saving" },
  unsaved: { icon: "saving", label: "Not saved yet" },
  failed: { icon: "error", label: "Not saved" },
};

const DRAFT_MESSAGE = "Text typed into a field is applied and saved when you leave the field or press Enter.";

/** The save state of the show, with drafts counted as unsaved. */
export function SaveStateSign() {
  const stored = useSession((session) => session.saveState);
  const saveMessage = useSession((session) => session.saveMessage);
  const hasDrafts = useStore(drafts, (all) => Object.keys(all).length > 0) && stored === "saved";
  const saveState = hasDrafts ? "unsaved" : stored;
  const message = hasDrafts ? DRAFT_MESSAGE : saveMessage;
  const { icon, label } = signs[saveState];
  return (
    <span
      role="status"
      title={message || undefined}
      className={`${styles.save} ${saveState === "failed" ? styles.failed : ""}`}
    >
      <Icon name={icon} size={14} />
      <span className={styles.saveLabel}>{label}</span>
    </span>
  );
}
