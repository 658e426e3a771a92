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

/** Whether a step put another show in the place of one: an edit leaves most of its parts the same objects. */
function isAnotherShow(before: Show, after: Show): boolean {
  return before.lanes !== after.lanes && before.lineUp !== after.lineUp;
}

function whichAre(titles: readonly string[], done: string): string {
  const [first, ...others] = titles;
  return others.length === 0 ? `“${first}” is ${done}` : `${titles.length} designs are ${done}`;
}

function wayBack(titles: readonly string[]): string {
  const them = titles.length === 1 ? "it" : "them";
  return `Undo brings ${them} back; later, the bin does.`;
}

/** Who plays what now, where that has changed. */
function newSides(before: Show, after: Show): string {
  const left =
    before.left === after.left ? "" : ` “${titleOf(after.designs[after.left])}” is the left coil now.`;
  const right = before.right !== null && after.right === null ? " There is no right coil now." : "";
  return left + right;
}

/** What a step took away, and where it is; empty where it took nothing. */
function goneSentence(before: Show | undefined, after: Show): string {
  if (!before) return "";
  if (isAnotherShow(before, after)) {
    const ids = before.order.filter((id) => !sameValue(before.designs[id], after.designs[id]));
    const titles = ids.map((id) => titleOf(before.designs[id]));
    return ids.length === 0
      ? ""
      : `${whichAre(titles, "replaced")}. Undo brings ${titles.length === 1 ? "it" : "them"} back; later, the versions and the bin do.`;
  }
  const ids = before.order.filter((id) => !Object.hasOwn(after.designs, id));
  const titles = ids.map((id) => titleOf(before.designs[id]));
  if (ids.length === 0) return "";
  return `${whichAre(titles, "no longer in the show")}.${newSides(before, after)} ${wayBack(titles)}`;
}

/** While the last step took designs away: where they are, until something else is done. */
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
          <Button onClick={openBin}>Open the bin</Button>
          <Button onClick={() => setDismissed(before ?? null)}>Dismiss</Button>
        </div>
      )}
    </div>
  );
}
