import type { Show } from "../design/show";
import { titleOf } from "../design/titleOf";
import { Button } from "../ui/Button";
import { Dialog } from "../ui/Dialog";
import { dropAllDrafts } from "../ui/drafts";
import { useShow } from "../workbench/session/hooks";
import { workbench } from "../workbench/session/session";
import styles from "./ReplaceQuestion.module.css";

/** A show that is about to take the place of the present one. */
export interface ComingShow {
  /** what the step is called, as in “open tour.coilwright-show.json” */
  label: string;
  /** as in “the show of tour.coilwright-show.json” */
  name: string;
  show: Show;
}

/** Titles that are listed; of more the number is told. */
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

/** What was typed and not taken over goes with the designs that it was typed for. */
function replace({ label, show }: ComingShow): void {
  workbench.replaceShow(label, show);
  dropAllDrafts();
}

/** Asks before a show takes the place of the present one, and says which designs go and which come. */
export function ReplaceQuestion({ coming, onClose }: { coming: ComingShow | null; onClose: () => void }) {
  const present = useShow((show) => show);
  const then = (act: (coming: ComingShow) => void) => () => {
    if (coming) act(coming);
    onClose();
  };
  return (
    <Dialog
      title="Replace what is open?"
      open={coming !== null}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>Cancel</Button>
          <Button onClick={then(({ label, show }) => workbench.addDesignsOf(label, show))}>
            Add its designs beside
          </Button>
          <Button kind="filled" onClick={then(replace)}>
            Open, and keep the present one as a version
          </Button>
        </>
      }
    >
      {coming && (
        <>
          <p>
            {coming.name} brings designs, line-up, score and lanes of its own. They take the place of those
            that are open; what is open now is kept among the versions, and the step can be taken back.
          </p>
          <div className={styles.sides}>
            <Titles heading="Goes" show={present} />
            <Titles heading="Comes" show={coming.show} />
          </div>
        </>
      )}
    </Dialog>
  );
}
