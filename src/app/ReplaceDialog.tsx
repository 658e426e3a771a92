import type { Show } from "../design/show";
import { titleOf } from "../design/titleOf";
import { Button } from "../ui/Button";
import { Dialog } from "../ui/Dialog";
import { dropAllDrafts } from "../ui/drafts";
import { useShow } from "../workbench/session/hooks";
import { workbench } from "../workbench/session/session";
import styles from "./ReplaceDialog.module.css";

/** A show that is about to replace the present one. */
export interface IncomingShow {
  /** name of the undo step, such as “open tour.coilwright-show.json” */
  label: string;
  /** such as “the show of tour.coilwright-show.json” */
  name: string;
  show: Show;
}

/** Titles that are listed; the others are counted. */
const MOST_TITLES = 8;

function Titles({ heading, show }: { heading: string; show: Show }) {
  const more = show.order.length - MOST_TITLES;
  return (
    <section className={styles.side}>
      <h3>{heading}</h3>
      <ul>
        {show.order.slice(0, MOST_TITLES).map((id) => (
          <li key={id}>{titleOf(show.designs[id])}</li>
        ))}
        {more > 0 && <li className={styles.more}>and {more} more</li>}
      </ul>
    </section>
  );
}

/** Drafts are dropped together with the designs they belong to. */
function replace({ label, show }: IncomingShow): void {
  workbench.replaceShow(label, show);
  dropAllDrafts();
}

/** Asks before a show replaces the present one, and lists the designs of both. */
export function ReplaceDialog({ incoming, onClose }: { incoming: IncomingShow | null; onClose: () => void }) {
  const present = useShow((show) => show);
  const then = (act: (incoming: IncomingShow) => void) => () => {
    if (incoming) act(incoming);
    onClose();
  };
  return (
    <Dialog
      title="Replace the open show?"
      open={incoming !== null}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>Cancel</Button>
          <Button onClick={then(({ label, show }) => workbench.addDesignsOf(label, show))}>
            Add its designs
          </Button>
          <Button kind="filled" onClick={then(replace)}>
            Open and save present show as version
          </Button>
        </>
      }
    >
      {incoming && (
        <>
          <p>
            {incoming.name} has its own designs, line-up, score and lanes. They replace those of the open
            show, which is saved as a version. You can undo this.
          </p>
          <div className={styles.sides}>
            <Titles heading="Replaced" show={present} />
            <Titles heading="Opened" show={incoming.show} />
          </div>
        </>
      )}
    </Dialog>
  );
}
