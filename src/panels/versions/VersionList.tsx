import { titleOf } from "../../design/titleOf";
import type { VersionSummary } from "../../workbench/keeping/version";
import { VersionSketch } from "./VersionSketch";
import styles from "./Versions.module.css";
import { versionDate } from "./versionDate";
import type { ReadVersion } from "./versionDocument";

interface VersionListProps {
  versions: readonly VersionSummary[];
  /** id of the selected one */
  chosen: string | null;
  read: ReadVersion;
  now: Date;
  onChoose: (id: string) => void;
  /** shown if there are none */
  empty: string;
}

/** Versions of one group, newest first, each with date, title, cause and thumbnail. */
export function VersionList({ versions, chosen, read, now, onChoose, empty }: VersionListProps) {
  if (versions.length === 0) return <p className={styles.empty}>{empty}</p>;
  return (
    <ul className={styles.list}>
      {versions.map(({ id, title, at, cause }) => (
        <li key={id}>
          <button
            type="button"
            className={styles.row}
            aria-pressed={id === chosen}
            data-version={id}
            onClick={() => onChoose(id)}
          >
            <VersionSketch id={id} read={read} />
            <span className={styles.words}>
              <time dateTime={at} className={styles.date}>
                {versionDate(at, now)}
              </time>
              <span className={styles.title}>{titleOf({ title })}</span>
              <span className={styles.cause}>{cause}</span>
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}
