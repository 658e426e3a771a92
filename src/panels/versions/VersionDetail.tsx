import type { Show } from "../../design/show";
import { titleOf } from "../../design/titleOf";
import { CoilSketch } from "../../drawing/CoilSketch";
import { Button } from "../../ui/Button";
import type { VersionSummary } from "../../workbench/keeping/version";
import { useUnitSystem } from "../../workbench/session/hooks";
import { Compared } from "./Compared";
import { useVersionDocument } from "./useVersions";
import { shapesOf } from "./VersionSketch";
import styles from "./Versions.module.css";
import { versionDate } from "./versionDate";
import type { ReadVersion } from "./versionDocument";

/** id of the heading, which gets the focus where it replaces the list on a narrow screen */
export const VERSION_NAME = "version-name";

/** What restoring a version will do. */
function restoreText({ kind, designId }: VersionSummary, show: Show): string {
  const undo = "You can undo this in one step.";
  if (kind === "show")
    return `Restoring replaces the present show with this one, including its designs, lanes and line-up; the present one is first saved as a version. ${undo}`;
  const present = designId !== null && Object.hasOwn(show.designs, designId) ? show.designs[designId] : null;
  return present
    ? `Restoring replaces “${titleOf(present)}” with this version; the present state is first moved to the bin. ${undo}`
    : `Restoring adds this design to the show again. ${undo}`;
}

interface VersionDetailProps {
  version: VersionSummary;
  read: ReadVersion;
  show: Show;
  now: Date;
  /** why nothing can be changed; null if it can */
  readOnly: string | null;
  onRestore: () => void;
  onExport: () => void;
  onDelete: () => void;
}

/** One version: its date and cause, its differences from the present, and its actions. */
export function VersionDetail(props: VersionDetailProps) {
  const { version, read, show, now, readOnly, onRestore, onExport, onDelete } = props;
  const system = useUnitSystem();
  const document = useVersionDocument(version.id, read);
  const readable = document !== null && document.kind !== "unreadable";
  return (
    <>
      <div className={styles.head}>
        <CoilSketch shapes={shapesOf(document)} width={120} height={120} />
        <div>
          <h2 className={styles.name} tabIndex={-1} id={VERSION_NAME}>
            {titleOf(version)}
          </h2>
          <p>
            {version.kind === "show" ? "The whole show" : "A design"}, as of{" "}
            <time dateTime={version.at}>{versionDate(version.at, now)}</time>
          </p>
          <p className={styles.cause}>Reason: {version.cause}</p>
        </div>
      </div>
      <div className={styles.actions}>
        <Button kind="filled" disabled={!readable || readOnly !== null} onClick={onRestore}>
          Restore
        </Button>
        <Button onClick={onExport}>Export as a file</Button>
        <Button kind="bare" icon="remove" onClick={onDelete}>
          Delete permanently
        </Button>
      </div>
      <p className={styles.hint}>{readOnly ?? restoreText(version, show)}</p>
      <h3 className={styles.heading}>Compared with now</h3>
      <Compared document={document} designId={version.designId} show={show} system={system} />
    </>
  );
}
