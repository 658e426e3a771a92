import { useEffect } from "react";
import { Button } from "../ui/Button";
import { lazyPart } from "../ui/lazyPart";
import { useSession } from "../workbench/session/hooks";
import { session } from "../workbench/session/session";
import { backToBench } from "./place";
import styles from "./SheetView.module.css";
import { settleDrafts, UNREAD_NOTICE } from "./settleDrafts";

const BuildSheet = lazyPart(() => import("../sheet/BuildSheet"), "BuildSheet", "build sheet");

/** The button that led here is out of sight now, so the focus goes with the reader. */
const takeFocus = (sheet: HTMLElement | null) => {
  sheet?.focus({ preventScroll: true });
  if (sheet) window.scrollTo(0, 0);
};

/** What was typed on the bench and could not be used, because the bench's own notices are out of sight. */
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

/** The build sheet as it will be printed, with a bar above it that stays off the paper. */
export function SheetView() {
  useEffect(() => settleDrafts(session.store.getState().history.present.open), []);
  return (
    <div className={styles.view}>
      <header className={styles.bar}>
        <Button onClick={backToBench}>Back to the bench</Button>
        <p className={styles.hint}>Fits one page of A4 or Letter; a PDF is one of the printer's choices.</p>
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
