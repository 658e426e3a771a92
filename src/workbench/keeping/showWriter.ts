/** Writes the show: synchronously to local storage, then to the journal, one write at a time. */
import type { Show } from "../../design/show";
import { versionOfText } from "./asideTexts";
import { databaseTrouble, NO_DATABASE } from "./findAtStart";
import type { Following } from "./following";
import type { JournalRecord } from "./journal";
import type { JournalOutcome, KeepingDatabase } from "./keepingDatabase";
import { keptText, type ReadShow } from "./loadedShow";
import type { LocalPlace } from "./localPlace";
import type { Shelf } from "./shelf";
import { CAUSES, shelvedShow } from "./shelvedTexts";
import { isQuotaError, refusedWriteSentence } from "./storageError";
import { BACKUP_KEYS, SHOW_KEY } from "./storageKeys";
import type { NewVersion } from "./version";

export type SaveOutcome =
  /** on disk; with a sentence if local storage failed */
  | { kind: "saved"; localTrouble: string | null }
  /** in local storage only, which browsers write to disk at some later time */
  | { kind: "kept"; sentence: string }
  | { kind: "failed"; sentence: string }
  | { kind: "held"; sentence: string }
  /** another tab has won; `shelved` if this tab's show was saved as a version */
  | { kind: "conflict"; shelved: boolean };

export interface ShowWriter {
  /** Writes a state found only in local storage to the journal; null if there is none. */
  recordBase(): Promise<SaveOutcome> | null;
  save(show: Show): Promise<SaveOutcome>;
  /** Another tab's state was adopted or backed up: this tab may write again. */
  endLoss(): void;
}

export interface ShowWriterNeeds {
  local: LocalPlace;
  following: Following;
  database: KeepingDatabase | null;
  shelf: Shelf | null;
  readShow: ReadShow;
  now: () => Date;
  newId: () => string;
}

interface LocalOutcome {
  record: JournalRecord;
  /** why it is not in local storage; null if it is */
  trouble: string | null;
  /** states that a losing tab left in local storage */
  versions: readonly NewVersion[];
}

/** Creates the writer of a tab. */
export function newShowWriter(needs: ShowWriterNeeds): ShowWriter {
  const { local, following, database, shelf, readShow, now, newId } = needs;
  /** id of the version with this tab's show, once another tab has won */
  let lost: string | null = null;
  let underWay: Promise<unknown> | null = null;

  const recordOf = (show: Show): JournalRecord => {
    const revision = Math.max(following.revision(), following.record() ?? 0) + 1;
    const mark = { revision, savedAt: now(), writer: following.writer, follows: following.record() };
    return { revision, text: keptText(show, mark) };
  };
  const writeText = (text: string): unknown => {
    const refusal = local.write(SHOW_KEY, text);
    if (!isQuotaError(refusal)) return refusal;
    for (const key of BACKUP_KEYS) local.remove(key);
    return local.write(SHOW_KEY, text);
  };
  /** Null if another tab has stored a newer state. */
  const writeLocally = (show: Show): LocalOutcome | null => {
    const stored = local.read(SHOW_KEY);
    if (following.isNewer(stored.text)) return null;
    const record = recordOf(show);
    const held = following.localHeldBecause();
    if (held !== null) return { record, trouble: held, versions: [] };
    const left = following.isForeign(stored.text) ? stored.text : null;
    const cause = { cause: CAUSES.otherTab };
    const versions = left === null ? [] : [versionOfText(left, readShow, now(), cause)];
    // unreadable text might be another tab's and is not overwritten
    const refusal = stored.refusal ?? writeText(record.text);
    if (refusal === null) following.wroteLocal(record.text, record.revision);
    return { record, trouble: refusal === null ? null : refusedWriteSentence(refusal), versions };
  };
  const tryRecord = async (
    place: KeepingDatabase,
    record: JournalRecord,
    versions: readonly NewVersion[],
  ): Promise<JournalOutcome> => {
    const follows = following.record() ?? 0;
    const known = following.base();
    const base = known && known.revision < record.revision ? known : null;
    const outcome = await place.writeJournal({ record, base, follows, versions });
    if (outcome.kind === "written") {
      following.wroteRecord(record.revision);
      return outcome;
    }
    const { head } = outcome;
    if (!following.isPast(head)) return outcome;
    const aside = versionOfText(head.text, readShow, now(), { cause: CAUSES.beside, offered: true });
    const unseen = following.record() === null && !following.startedFrom(head.text);
    following.wroteRecord(head.revision);
    return tryRecord(place, record, unseen ? [...versions, aside] : versions);
  };
  const writeRecord = (
    place: KeepingDatabase,
    record: JournalRecord,
    versions: readonly NewVersion[],
  ): Promise<JournalOutcome> => {
    const write = () => tryRecord(place, record, versions);
    return shelf ? shelf.withRoom(write) : write();
  };
  /** One at a time; the first starts synchronously, because the page may be about to close. */
  const inTurn = <Value>(work: () => Promise<Value>): Promise<Value> => {
    const turn = underWay ? underWay.then(work, work) : work();
    underWay = turn;
    const end = () => {
      if (underWay === turn) underWay = null;
    };
    turn.then(end, end);
    return turn;
  };
  const lose = async (show: Show): Promise<SaveOutcome> => {
    lost ??= newId();
    const at = now().toISOString();
    const version = shelvedShow(show, { id: lost, at, cause: CAUSES.otherTab, offered: true });
    const shelved =
      (await shelf?.keep([version]).then(
        () => true,
        () => false,
      )) ?? false;
    return { kind: "conflict", shelved };
  };
  /** Restores local storage to the state of the tab that has won in the journal. */
  const giveBack = (own: string, winner: string) => {
    if (local.read(SHOW_KEY).text === own) local.write(SHOW_KEY, winner);
  };
  const saveInDatabase = async (
    place: KeepingDatabase,
    show: Show,
    outcome: LocalOutcome,
  ): Promise<SaveOutcome> => {
    const { trouble, versions } = outcome;
    if (lost !== null) return lose(show);
    // if local storage failed, an earlier write may have used its revision meanwhile
    const record = trouble === null ? outcome.record : recordOf(show);
    try {
      const written = await writeRecord(place, record, versions);
      if (written.kind === "written") return { kind: "saved", localTrouble: trouble };
      giveBack(record.text, written.head.text);
      return await lose(show);
    } catch (error) {
      const sentence = isQuotaError(error) ? refusedWriteSentence(error) : databaseTrouble(error);
      return trouble === null ? { kind: "kept", sentence } : { kind: "failed", sentence: trouble };
    }
  };
  const recordInDatabase = async (place: KeepingDatabase, base: JournalRecord): Promise<SaveOutcome> => {
    try {
      const { kind } = await writeRecord(place, base, []);
      return kind === "written"
        ? { kind: "saved", localTrouble: null }
        : { kind: "conflict", shelved: false };
    } catch (error) {
      return { kind: "kept", sentence: databaseTrouble(error) };
    }
  };
  return {
    recordBase() {
      const base = following.base();
      return database && base && inTurn(() => recordInDatabase(database, base));
    },
    async save(show) {
      const held = following.heldBecause();
      if (held !== null) return { kind: "held", sentence: held };
      if (lost !== null) return lose(show);
      const outcome = writeLocally(show);
      if (!outcome) return lose(show);
      if (database) return inTurn(() => saveInDatabase(database, show, outcome));
      if (outcome.trouble === null) return { kind: "kept", sentence: NO_DATABASE };
      const kind = following.localHeldBecause() === null ? "failed" : "held";
      return { kind, sentence: outcome.trouble };
    },
    endLoss() {
      if (lost !== null) void database?.endOffer(lost).catch(() => undefined);
      lost = null;
    },
  };
}
