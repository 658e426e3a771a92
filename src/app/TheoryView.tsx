import { Button } from "../ui/Button";
import { lazyPart } from "../ui/lazyPart";
import { backToBench } from "./place";
import styles from "./TheoryView.module.css";

const Theory = lazyPart(() => import("../panels/theory/Theory"), "Theory", "theory page");

/** The button that opened this view is hidden now, so the focus moves here. */
const takeFocus = (page: HTMLElement | null) => page?.focus();

/** The theory page over the whole width, with a button back to the bench. */
export function TheoryView() {
  return (
    <div className={styles.view}>
      <div className={styles.bar}>
        <Button onClick={backToBench}>Back to the bench</Button>
      </div>
      <main className={styles.page} tabIndex={-1} ref={takeFocus}>
        <Theory />
      </main>
    </div>
  );
}
