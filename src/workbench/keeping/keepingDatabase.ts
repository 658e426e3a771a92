/**
 * The browser's database as the keeping uses it: the journal of the show and its dated versions.
 * Every transaction that writes asks for strict durability, so that what has been answered is on disk.
 */
import type { JournalRecord } from "./journal";
import type { KeptVersion, NewVersion, VersionSummary } from "./version";

export interface JournalWrite {
  record: JournalRecord;
  /** revision of the newest record that this show follows; 0 where it follows none */
  follows: number;
  /** the state that this show grew from, where the journal has it not: found in local storage at the start */
  base: JournalRecord | null;
  /** versions that are kept in the same transaction */
  versions: readonly NewVersion[];
}

export type JournalOutcome =
  | { kind: "written" }
  /** a record newer than the one followed stands in the journal, and nothing was written */
  | { kind: "conflict"; head: JournalRecord };

/** Every call rejects where the browser refuses, and after some seconds where it does not answer. */
export interface KeepingDatabase {
  readJournal(): Promise<readonly JournalRecord[]>;
  writeJournal(write: JournalWrite): Promise<JournalOutcome>;
  keepVersions(versions: readonly NewVersion[]): Promise<void>;
  listVersions(): Promise<readonly VersionSummary[]>;
  /** null where there is none of the id */
  readVersion(id: string): Promise<KeptVersion | null>;
  removeVersions(ids: readonly string[]): Promise<void>;
  /** The version is not offered at a start any more. */
  endOffer(id: string): Promise<void>;
  /** Tells when the browser closes the database by itself, as when its data is cleared. */
  listenForLoss(listener: () => void): () => void;
}
