import { useEffect } from "react";
import { Button } from "../ui/Button";
import { lazyPart } from "../ui/lazyPart";
import { useSession } from "../workbench/session/hooks";
import { session } from "../workbench/session/session";
import { backToBench } from "./place";
import styles from "./SheetView.module.css";
import { settleDrafts, UNREAD_NOTICE } from "./settleDrafts";

const BuildSheet = lazyPart(() => import("../sheet/BuildSheet"), "BuildSheet", "build sheet");

/** The button that opened this view is hidden now, so the focus moves here. */
const takeFocus = (sheet: HTMLElement | null) => {
  sheet?.focus({ preventScroll: true });
  if (sheet) window.scrollTo(0, 0);
};

/** Drafts that could not be committed; the bench's own notices are hidden here. */
function UnreadDrafts() {
  const notice = useSession(({ notices }) => notices.find(({ id }) => id === UNREAD_NOTICE));
  return (
    <div role="status" className={styles.unread}>
      {notice && <p>{notice.sentence}</p>}
      {notice?.details.map((detail) => (
        <p key={detail}>{detail}</p>
      ))}
    </div>
  );
}

/** The build sheet as it will be printed, with a toolbar above that is not printed. */
export function SheetView() {
  useEffect(() => settleDrafts(session.store.getState().history.present.open), []);
  return (
    <div className={styles.view}>
      <header className={styles.bar}>
        <Button onClick={backToBench}>Back to the bench</Button>
        <p className={styles.hint}>
          Fits one page of A4 or Letter. To get a PDF, choose it in the print dialog.
        </p>
        <Button kind="filled" icon="sheet" onClick={() => window.print()}>
          Print
        </Button>
        <UnreadDrafts />
      </header>
      <main className={styles.paper} tabIndex={-1} ref={takeFocus}>
        <BuildSheet />
      </main>
    </div>
  );
}
