/**
 * The interface of the database: the journal of the show and its dated versions. Every write transaction
 * requests strict durability, so that completed writes are on disk.
 */
import type { JournalRecord } from "./journal";
import type { KeptVersion, NewVersion, VersionSummary } from "./version";

export interface JournalWrite {
  record: JournalRecord;
  /** revision of the newest record that this show follows; 0 if there is none */
  follows: number;
  /** the state found in local storage at the start, from which this show derives, if the journal does not have it */
  base: JournalRecord | null;
  /** versions written in the same transaction */
  versions: readonly NewVersion[];
}

export type JournalOutcome =
  | { kind: "written" }
  /** the journal has a newer record than the one followed, and nothing was written */
  | { kind: "conflict"; head: JournalRecord };

/** Every call rejects if the browser refuses, and after some seconds if it does not respond. */
export interface KeepingDatabase {
  readJournal(): Promise<readonly JournalRecord[]>;
  writeJournal(write: JournalWrite): Promise<JournalOutcome>;
  keepVersions(versions: readonly NewVersion[]): Promise<void>;
  listVersions(): Promise<readonly VersionSummary[]>;
  /** null if there is none with the id */
  readVersion(id: string): Promise<KeptVersion | null>;
  removeVersions(ids: readonly string[]): Promise<void>;
  /** Stops offering the version at the start. */
  endOffer(id: string): Promise<void>;
  /** Calls back when the browser closes the database by itself, as when its data are cleared. */
  listenForLoss(listener: () => void): () => void;
}
