import { useState } from "react";
import { useStore } from "zustand";
import { useShallow } from "zustand/react/shallow";
import type { Show } from "../design/show";
import { titleOf } from "../design/titleOf";
import { Button } from "../ui/Button";
import { Icon } from "../ui/Icon";
import { sameValue } from "../workbench/session/history";
import { session, workbench } from "../workbench/session/session";
import styles from "./Notices.module.css";
import { openBin } from "./place";

/** Whether a step replaced the show: an edit keeps most parts as the same objects. */
function isAnotherShow(before: Show, after: Show): boolean {
  return before.lanes !== after.lanes && before.lineUp !== after.lineUp;
}

function summaryOf(titles: readonly string[], done: string): string {
  const [first, ...others] = titles;
  return others.length === 0 ? `“${first}” is ${done}` : `${titles.length} designs are ${done}`;
}

function restoreHint(titles: readonly string[]): string {
  const them = titles.length === 1 ? "it" : "them";
  return `Undo restores ${them}; later you can restore ${them} from the bin.`;
}

/** The new left and right coil, if they have changed. */
function newSides(before: Show, after: Show): string {
  const left =
    before.left === after.left ? "" : ` “${titleOf(after.designs[after.left])}” is now the left coil.`;
  const right = before.right !== null && after.right === null ? " There is now no right coil." : "";
  return left + right;
}

/** The designs that a step removed, and how to restore them; empty if there are none. */
function goneSentence(before: Show | undefined, after: Show): string {
  if (!before) return "";
  if (isAnotherShow(before, after)) {
    const ids = before.order.filter((id) => !sameValue(before.designs[id], after.designs[id]));
    const titles = ids.map((id) => titleOf(before.designs[id]));
    return ids.length === 0
      ? ""
      : `${summaryOf(titles, "replaced")}. Undo restores ${titles.length === 1 ? "it" : "them"}; later you can restore from versions and bin.`;
  }
  const ids = before.order.filter((id) => !Object.hasOwn(after.designs, id));
  const titles = ids.map((id) => titleOf(before.designs[id]));
  if (ids.length === 0) return "";
  return `${summaryOf(titles, "no longer in the show")}.${newSides(before, after)} ${restoreHint(titles)}`;
}

/** After a step that removed designs, says how to restore them, until the next step. */
export function GoneNotice() {
  const { before, after } = useStore(
    session.store,
    useShallow(({ history }) => ({ before: history.past.at(-1)?.state, after: history.present })),
  );
  const [dismissed, setDismissed] = useState<Show | null>(null);
  const sentence = goneSentence(before, after);
  const shown = sentence !== "" && dismissed !== before;
  return (
    <div aria-live="polite">
      {shown && (
        <div className={`${styles.notice} ${styles.note}`}>
          <Icon name="note" />
          <p className={styles.words}>{sentence}</p>
          <Button icon="undo" onClick={() => workbench.undo()}>
            Undo
          </Button>
          <Button onClick={openBin}>Open bin</Button>
          <Button onClick={() => setDismissed(before ?? null)}>Dismiss</Button>
        </div>
      )}
    </div>
  );
}
