/**
 * Stores the show in the browser: synchronously in local storage, and in the journal of the database, whose
 * completed transaction means that it is on disk. Only one tab writes at a time: each save has a revision, and
 * a save is held back if the journal or local storage has one that this tab does not follow.
 */
import type { Show } from "../../design/show";
import { keepAsides, moveOldTexts, versionOfText } from "./asideTexts";
import { lastSetAside, newestBackup, setAside } from "./backups";
import type { FoundAtStart } from "./findAtStart";
import { newFollowing } from "./following";
import type { LoadedShow, ReadShow } from "./loadedShow";
import { newLocalPlace } from "./localPlace";
import { type Resolution, resolveKept, type Unreadable } from "./resolve";
import type { Shelf } from "./shelf";
import { CAUSES } from "./shelvedTexts";
import { newShowWriter, type SaveOutcome } from "./showWriter";
import { refusedWriteSentence } from "./storageError";
import { SHOW_KEY } from "./storageKeys";

export interface Loaded {
  shown: LoadedShow;
  /** unreadable data in local storage, even if the journal has a readable state */
  unreadable: Unreadable | null;
}

export interface Keeper {
  /** Reads the stored data; nothing is written before. */
  load(): Loaded;
  /** Resolves when other states found at the start have been stored as versions. */
  tidied(): Promise<void>;
  /** The newest readable state, for when the stored show is not readable. */
  fallback(): Show | null;
  /** Writes a state found only in local storage to the journal; null if there is none. */
  recordBase(): Promise<SaveOutcome> | null;
  /** Saves in local storage before it returns, and in the journal before it resolves. Never rejects. */
  save(show: Show): Promise<SaveOutcome>;
  /** Whether local storage has a newer state than this tab follows. */
  changedElsewhere(): boolean;
  /** How much of this tab's saved data still exists. */
  remainingData(): Promise<"all" | "a part" | "nothing">;
  /** The show that another tab has stored, which this tab now follows; null if it cannot be read. */
  takeOther(): Promise<Show | null>;
  /** Backs up the stored data, so that the next save may write; returns why it could not, or null. */
  startAfresh(): Promise<string | null>;
  /** Lets the next save overwrite data that could not be backed up; only at the user's request. */
  discardStored(): void;
  /** Why nothing is saved; null if saving is allowed. */
  heldBecause(): string | null;
  /** Why local storage could not be read at the start; null if it could. */
  refusedAtStart(): string | null;
  /** The stored text, readable or not, for a file; null if there is none. */
  rawText(): string | null;
}

export interface KeeperNeeds {
  storage: Storage | null;
  found: FoundAtStart;
  shelf: Shelf | null;
  readShow: ReadShow;
  now: () => Date;
  newId: () => string;
}

const HELD_AS_UNREADABLE =
  "Nothing is saved, because the stored data could not be backed up: export them, then discard them.";

/** ms between two attempts to read a database that is being closed, and their number */
const RETRY_DELAY = 300;
const MOST_ATTEMPTS = 5;

/** Creates the keeper; `readShow` is passed in, so that the keeper does not depend on the format. */
export function newKeeper({ storage, found, shelf, readShow, now, newId }: KeeperNeeds): Keeper {
  const { database } = found;
  const local = newLocalPlace(storage);
  const following = newFollowing(newId());
  const writer = newShowWriter({ local, following, database, shelf, readShow, now, newId });
  const asideNeeds = database && shelf && { local, database, shelf, readShow, now };
  let atStart: Resolution | null = null;
  let refusedAtStart: string | null = null;
  let tidied: Promise<void> = Promise.resolve();

  /** Backs up text that must not be lost: in local storage if it fits, else among the versions. */
  const keepText = async (text: string) => {
    if (setAside(local, text, now()) === null) return true;
    if (!asideNeeds) return false;
    return keepAsides([{ text, reading: { kind: "nothing" }, offered: false }], asideNeeds).then(
      () => true,
      () => false,
    );
  };
  /** Restores an empty local storage from the database; null if that has nothing. */
  const putBack = ({ loaded, text }: Resolution) =>
    loaded.kind === "ok" && text !== null && local.write(SHOW_KEY, text) === null ? text : null;
  const holdUntilBackedUp = (text: string) => {
    if (setAside(local, text, now()) === null) return;
    following.holdLocal(HELD_AS_UNREADABLE);
    void keepText(text).then((kept) => kept && following.holdLocal(null));
  };
  const tidyUp = async (resolution: Resolution) => {
    if (!asideNeeds) return;
    const asides = resolution.aside.filter(({ text }) => text !== resolution.unreadable?.text);
    await keepAsides(asides, asideNeeds);
    await moveOldTexts(asideNeeds);
  };
  const look = async () => {
    const records = await (database?.readJournal() ?? Promise.resolve([])).catch(() => null);
    const stored = local.read(SHOW_KEY).text;
    return { records, stored, resolution: resolveKept(stored, records ?? [], readShow) };
  };
  /** The journal's records, with retries for a database that is being closed; null if it does not respond. */
  const recordsWithRetries = async () => {
    if (!database) return [];
    for (let attempt = 1; ; attempt++) {
      const records = await database.readJournal().catch(() => null);
      if (records !== null || attempt === MOST_ATTEMPTS) return records;
      await new Promise((resolve) => setTimeout(resolve, RETRY_DELAY));
    }
  };
  type Look = Awaited<ReturnType<typeof look>>;
  const adopt = ({ records, stored, resolution }: Look) =>
    following.follow(stored, resolution.text, resolution.revision, records ? resolution.head : null);
  /** Saves a state of another tab that this tab does not use. */
  const keepOther = async (text: string): Promise<boolean> => {
    if (!shelf) return setAside(local, text, now()) === null;
    const version = versionOfText(text, readShow, now(), { cause: CAUSES.otherTab });
    return shelf.keep([version]).then(
      () => true,
      () => setAside(local, text, now()) === null,
    );
  };

  return {
    load() {
      const { text, refusal } = local.read(SHOW_KEY);
      if (refusal !== null) refusedAtStart = refusedWriteSentence(refusal);
      const resolution = resolveKept(text, found.records ?? [], readShow);
      atStart = resolution;
      const stored = refusal === null ? (text ?? putBack(resolution)) : null;
      following.follow(stored, resolution.text, resolution.revision, found.records ? resolution.head : null);
      if (resolution.loaded.kind === "too new") following.hold(resolution.loaded.sentence);
      else {
        if (resolution.unreadable) holdUntilBackedUp(resolution.unreadable.text);
        // after a failure it is retried at the next start: nothing has been removed
        tidied = tidyUp(resolution).catch(() => undefined);
      }
      return { shown: resolution.loaded, unreadable: resolution.unreadable?.reading ?? null };
    },
    tidied: () => tidied,
    fallback: () => atStart?.fallback?.show ?? newestBackup(local, readShow)?.show ?? null,
    recordBase: () => (following.heldBecause() === null ? writer.recordBase() : null),
    save: writer.save,
    changedElsewhere: () => following.isNewer(local.read(SHOW_KEY).text),
    async remainingData() {
      if (!following.hasSaved()) return "all";
      const records = await recordsWithRetries();
      const { text, refusal } = local.read(SHOW_KEY);
      const inLocal = text !== null || refusal !== null;
      const inDatabase = records === null || records.length > 0;
      if (!inLocal && records?.length === 0) return "nothing";
      return inLocal && inDatabase ? "all" : "a part";
    },
    async takeOther() {
      const seen = await look();
      if (seen.resolution.loaded.kind !== "ok") {
        if (seen.resolution.loaded.kind === "too new") following.hold(seen.resolution.loaded.sentence);
        return null;
      }
      adopt(seen);
      writer.endLoss();
      return seen.resolution.loaded.show;
    },
    async startAfresh() {
      const seen = await look();
      const texts = new Set([seen.stored, seen.resolution.text].filter((text) => text !== null));
      const isReadable = seen.resolution.loaded.kind === "ok";
      for (const text of texts) {
        const kept = isReadable ? await keepOther(text) : await keepText(text);
        // a readable state may live on in its own tab; unreadable text exists only here
        if (!kept && !isReadable) return HELD_AS_UNREADABLE;
      }
      adopt(seen);
      writer.endLoss();
      return null;
    },
    discardStored() {
      following.seeLocal(local.read(SHOW_KEY).text);
    },
    heldBecause: () => following.heldBecause() ?? (database ? null : following.localHeldBecause()),
    refusedAtStart: () => refusedAtStart,
    rawText: () =>
      atStart?.unreadable?.text ?? local.read(SHOW_KEY).text ?? lastSetAside(local) ?? atStart?.text ?? null,
  };
}
