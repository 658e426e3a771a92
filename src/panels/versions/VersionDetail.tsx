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

/** id of the heading, which takes the focus where the list makes room for it */
export const VERSION_NAME = "version-name";

/** What restoring a version will do, said before it is done. */
function restoringText({ kind, designId }: VersionSummary, show: Show): string {
  const undo = "One step of undo takes that back.";
  if (kind === "show")
    return `Restoring puts this show in place of the present one with its designs, lanes and line-up; the present one is kept as a version first. ${undo}`;
  const present = designId !== null && Object.hasOwn(show.designs, designId) ? show.designs[designId] : null;
  return present
    ? `Restoring puts this version in place of “${titleOf(present)}”; what is there now is kept in the bin first. ${undo}`
    : `Restoring puts this design back beside the others of the show. ${undo}`;
}

interface VersionDetailProps {
  version: VersionSummary;
  read: ReadVersion;
  show: Show;
  now: Date;
  /** why nothing can be changed; null where everything can */
  readOnly: string | null;
  onRestore: () => void;
  onExport: () => void;
  onDelete: () => void;
}

/** One version: what it is, what it would bring back, and what can be done with it. */
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
            {version.kind === "show" ? "The whole show" : "A design"}, as it was:{" "}
            <time dateTime={version.at}>{versionDate(version.at, now)}</time>
          </p>
          <p className={styles.cause}>Why it is kept: {version.cause}</p>
        </div>
      </div>
      <div className={styles.ways}>
        <Button kind="filled" disabled={!readable || readOnly !== null} onClick={onRestore}>
          Restore
        </Button>
        <Button onClick={onExport}>Export as a file</Button>
        <Button kind="bare" icon="remove" onClick={onDelete}>
          Delete for good
        </Button>
      </div>
      <p className={styles.hint}>{readOnly ?? restoringText(version, show)}</p>
      <h3 className={styles.heading}>Compared with now</h3>
      <Compared document={document} designId={version.designId} show={show} system={system} />
    </>
  );
}
