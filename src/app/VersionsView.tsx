import { Button } from "../ui/Button";
import { lazyPart } from "../ui/lazyPart";
import { backToBench } from "./place";
import styles from "./TheoryView.module.css";

const Versions = lazyPart(() => import("../panels/versions/Versions"), "Versions", "versions");

/** The button that opened this view is hidden now, so the focus moves here. */
const takeFocus = (page: HTMLElement | null) => page?.focus();

/** Versions and bin over the whole width, with a button back to the bench. */
export function VersionsView() {
  return (
    <div className={styles.view}>
      <div className={styles.bar}>
        <Button onClick={backToBench}>Back to the bench</Button>
      </div>
      <main className={styles.page} tabIndex={-1} ref={takeFocus}>
        <Versions />
      </main>
    </div>
  );
}
