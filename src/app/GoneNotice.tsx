import { useState } from "react";
import { useStore } from "zustand";
import { useShallow } from "zustand/react/shallow";
import type { Show } from "../design/show";
import { Button } from "../ui/Button";
import { Icon } from "../ui/Icon";
import { session, workbench } from "../workbench/session";
import styles from "./Notices.module.css";
import { openBin } from "./place";

/** Titles of the designs that a step took away. */
function goneWith(before: Show | undefined, after: Show): string[] {
  if (!before) return [];
  return before.order.filter((id) => !Object.hasOwn(after.designs, id)).map((id) => before.designs[id].title);
}

function sentence(titles: readonly string[]): string {
  const what = titles.length === 1 ? `“${titles[0]}” is` : `${titles.length} designs are`;
  return `${what} no longer in the show. Undo brings ${titles.length === 1 ? "it" : "them"} back; later, the bin does.`;
}

/** While the last step took designs away: where they are, until something else is done. */
export function GoneNotice() {
  const { before, after } = useStore(
    session.store,
    useShallow(({ history }) => ({ before: history.past.at(-1)?.state, after: history.present })),
  );
  const [dismissed, setDismissed] = useState<Show | null>(null);
  const titles = goneWith(before, after);
  const shown = titles.length > 0 && dismissed !== before;
  return (
    <div aria-live="polite">
      {shown && (
        <div className={`${styles.notice} ${styles.note}`}>
          <Icon name="note" />
          <p className={styles.words}>{sentence(titles)}</p>
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
