/**
 * Keeps the show in the browser's storage. One writer at a time across tabs: each save carries a
 * revision, and a save is held back when the stored text is not the one that this tab saw last.
 */
import type { Show } from "../../design/show";
import { addBackup, backupIsDue, lastSetAside, newestBackup, setAside } from "./backups";
import { keptText, type LoadedShow, type ReadShow, readKeptText } from "./loadedShow";
import { refusedWriteSentence } from "./storageError";
import { SHOW_KEY } from "./storageKeys";

export type SaveOutcome =
  | { kind: "saved" }
  | { kind: "failed"; sentence: string }
  | { kind: "held"; sentence: string }
  | { kind: "conflict" };

export interface Keeper {
  /** Reads what is kept; nothing is written before this has run. */
  load(): LoadedShow;
  /** The newest readable backup, for when the kept show cannot be read. */
  backup(): Show | null;
  save(show: Show): SaveOutcome;
  /** Whether the stored text is another one than this tab saw last. */
  changedElsewhere(): boolean;
  /** The show that another tab has stored, taken over as this tab's own; null where it cannot be read. */
  takeOther(): Show | null;
  /** Sets whatever is stored aside, so that the next save may write. */
  startAfresh(): SaveOutcome;
  /** Lets the next save write over what could not be set aside: only where its owner says so. */
  discardStored(): void;
  /** Why nothing is saved; null where saving is open. */
  heldBecause(): string | null;
  /** The stored text as it is, readable or not, for a file; null where there is none. */
  rawText(): string | null;
}

const HELD_BEFORE_LOAD = "Nothing is saved before the kept show has been read.";
const HELD_AS_UNREADABLE =
  "Nothing is saved, because what is kept could not be set aside: export it, then discard it.";

/** Makes the keeper over a storage; what reads a show is passed in, so that the two stay apart. */
export function newKeeper(storage: Storage, readShow: ReadShow, now: () => Date): Keeper {
  let loaded = false;
  let held: string | null = HELD_BEFORE_LOAD;
  let seenText: string | null = null;
  let revision = 0;

  const storedText = () => storage.getItem(SHOW_KEY);
  const changedElsewhere = () => {
    const text = storedText();
    return loaded && text !== null && text !== seenText;
  };
  const guarded = (write: () => void): SaveOutcome => {
    try {
      write();
      return { kind: "saved" };
    } catch (error) {
      return { kind: "failed", sentence: refusedWriteSentence(error) };
    }
  };
  const see = (text: string | null) => {
    const read = readKeptText(text, readShow);
    seenText = text;
    if (read.kind === "ok") revision = Math.max(revision, read.revision);
    return read;
  };
  const keepAside = (text: string) => {
    const outcome = guarded(() => setAside(storage, text, now()));
    held = outcome.kind === "saved" ? null : HELD_AS_UNREADABLE;
    return outcome;
  };
  const holdAsNeeded = (read: LoadedShow) => {
    held = null;
    if (read.kind === "too new") held = read.sentence;
    else if (read.kind !== "ok" && read.kind !== "nothing" && seenText !== null) keepAside(seenText);
  };
  const backUpStored = (force: boolean) => {
    const text = storedText();
    if (text === null || readKeptText(text, readShow).kind !== "ok") return;
    if (force || backupIsDue(storage, readShow, now())) guarded(() => addBackup(storage, readShow, text));
  };
  const write = (show: Show): SaveOutcome =>
    guarded(() => {
      const text = keptText(show, revision + 1, now());
      storage.setItem(SHOW_KEY, text);
      revision += 1;
      seenText = text;
    });

  return {
    load() {
      loaded = true;
      const read = see(storedText());
      holdAsNeeded(read);
      return read;
    },
    backup: () => newestBackup(storage, readShow)?.show ?? null,
    save(show) {
      if (held !== null) return { kind: "held", sentence: held };
      if (changedElsewhere()) return { kind: "conflict" };
      backUpStored(false);
      return write(show);
    },
    changedElsewhere,
    takeOther() {
      const read = see(storedText());
      holdAsNeeded(read);
      return read.kind === "ok" ? read.show : null;
    },
    startAfresh() {
      const text = storedText();
      const read = see(text);
      if (text === null) return { kind: "saved" };
      if (read.kind !== "ok") return keepAside(text);
      held = null;
      backUpStored(true);
      return { kind: "saved" };
    },
    discardStored() {
      see(storedText());
      held = null;
    },
    heldBecause: () => held,
    rawText: () => storedText() ?? lastSetAside(storage),
  };
}
