/**
 * Keeps the show in the browser: in local storage at once, and in the journal of the database, whose
 * answer means that it is on disk. One writer at a time across tabs: each save carries a revision, and
 * a save is held back when one that this tab does not follow stands in the journal or in local storage.
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
  /** what local storage holds and cannot be read, though the journal may have what can */
  unreadable: Unreadable | null;
}

export interface Keeper {
  /** Reads what is kept; nothing is written before this has run. */
  load(): Loaded;
  /** Answers when what was found beside the show at the start is among the versions. */
  tidied(): Promise<void>;
  /** The newest state that can be read, for when the kept show cannot be. */
  fallback(): Show | null;
  /** Puts into the journal what was found in local storage alone; null where there is nothing of the kind. */
  recordBase(): Promise<SaveOutcome> | null;
  /** Saves: in local storage before it returns, in the journal by the time it answers. Never rejects. */
  save(show: Show): Promise<SaveOutcome>;
  /** Whether local storage holds a newer state than this tab follows. */
  changedElsewhere(): boolean;
  /** What has become of what this tab has saved. */
  whatIsLeft(): Promise<"all" | "a part" | "nothing">;
  /** The show that another tab has stored, taken over as this tab's own; null where it cannot be read. */
  takeOther(): Promise<Show | null>;
  /** Sets whatever is stored aside, so that the next save may write; null, or why it could not. */
  startAfresh(): Promise<string | null>;
  /** Lets the next save write over what could not be set aside: only where its owner says so. */
  discardStored(): void;
  /** Why nothing is saved; null where saving is open. */
  heldBecause(): string | null;
  /** What local storage refused when it was read; null where it answered. */
  refusedAtStart(): string | null;
  /** The stored text as it is, readable or not, for a file; null where there is none. */
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
  "Nothing is saved, because what is kept could not be set aside: export it, then discard it.";

/** ms from one look at a database that is just being closed to the next, and how often */
const LOOK_AGAIN = 300;
const MOST_LOOKS = 5;

/** Makes the keeper; what reads a show is passed in, so that the two stay apart. */
export function newKeeper({ storage, found, shelf, readShow, now, newId }: KeeperNeeds): Keeper {
  const { database } = found;
  const local = newLocalPlace(storage);
  const following = newFollowing(newId());
  const writer = newShowWriter({ local, following, database, shelf, readShow, now, newId });
  const asideNeeds = database && shelf && { local, database, shelf, readShow, now };
  let atStart: Resolution | null = null;
  let refusedAtStart: string | null = null;
  let tidied: Promise<void> = Promise.resolve();

  /** Text that local storage must not lose: beside the show if there is room, else among the versions. */
  const keepText = async (text: string) => {
    if (setAside(local, text, now()) === null) return true;
    if (!asideNeeds) return false;
    return keepAsides([{ text, reading: { kind: "nothing" }, offered: false }], asideNeeds).then(
      () => true,
      () => false,
    );
  };
  /** Writes into an empty local storage what the database alone has kept; null where there is nothing of the kind. */
  const putBack = ({ loaded, text }: Resolution) =>
    loaded.kind === "ok" && text !== null && local.write(SHOW_KEY, text) === null ? text : null;
  const holdWhileKept = (text: string) => {
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
  /** The journal's records, also of a database that is just being closed; null where it does not answer. */
  const patientRecords = async () => {
    if (!database) return [];
    for (let looks = 1; ; looks++) {
      const records = await database.readJournal().catch(() => null);
      if (records !== null || looks === MOST_LOOKS) return records;
      await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN));
    }
  };
  type Look = Awaited<ReturnType<typeof look>>;
  const adopt = ({ records, stored, resolution }: Look) =>
    following.follow(stored, resolution.text, resolution.revision, records ? resolution.head : null);
  /** Keeps a state that another tab has stored and that this one does not take. */
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
        if (resolution.unreadable) holdWhileKept(resolution.unreadable.text);
        // what stays undone is done at the next start: nothing of it has been removed
        tidied = tidyUp(resolution).catch(() => undefined);
      }
      return { shown: resolution.loaded, unreadable: resolution.unreadable?.reading ?? null };
    },
    tidied: () => tidied,
    fallback: () => atStart?.fallback?.show ?? newestBackup(local, readShow)?.show ?? null,
    recordBase: () => (following.heldBecause() === null ? writer.recordBase() : null),
    save: writer.save,
    changedElsewhere: () => following.isNewer(local.read(SHOW_KEY).text),
    async whatIsLeft() {
      if (!following.hasSaved()) return "all";
      const records = await patientRecords();
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
        // a readable state may go on in its own tab; what nobody can read has this place alone
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
