/** Tracks what this tab has read and written, which decides what it may overwrite. */
import { envelopeHead } from "./loadedShow";

export interface Following {
  /** id of this page in the envelopes that it writes */
  readonly writer: string;
  /** highest revision that this tab has read or written */
  revision(): number;
  /** newest record of the journal that this tab follows; null if the journal could not be read */
  record(): number | null;
  /** The state this tab started from, if the journal does not have it yet. */
  base(): { revision: number; text: string } | null;
  /** Takes what was just read as this tab's own past and allows saving. */
  follow(localText: string | null, text: string | null, revision: number, record: number | null): void;
  /** Notes a text in local storage as seen and allows writing there. */
  seeLocal(text: string | null): void;
  wroteLocal(text: string, revision: number): void;
  wroteRecord(revision: number): void;
  hasSaved(): boolean;
  /** Whether the text in local storage was neither seen nor written by this tab. */
  isForeign(text: string | null): boolean;
  /**
   * Whether the text in local storage is a newer state than this tab follows. If the journal decides, a
   * text without a higher revision was left by a tab that lost the conflict there.
   */
  isNewer(text: string | null): boolean;
  /** Whether an unread record belongs to this tab's past: its own, or older than the state it started from. */
  isPast(record: { revision: number; text: string }): boolean;
  /** Whether this tab started from that text. */
  startedFrom(text: string): boolean;
  hold(sentence: string | null): void;
  holdLocal(sentence: string | null): void;
  heldBecause(): string | null;
  localHeldBecause(): string | null;
}

const HELD_BEFORE_LOAD = "Nothing is saved before the stored show has been read.";

/** Creates the state of a page that has read nothing yet. */
export function newFollowing(writer: string): Following {
  let held: string | null = HELD_BEFORE_LOAD;
  let localHeld: string | null = null;
  let seen: string | null = null;
  let started: { text: string | null; revision: number } = { text: null, revision: 0 };
  let revision = 0;
  let record: number | null = null;
  let base: { revision: number; text: string } | null = null;

  const isOwn = (text: string) => envelopeHead(text)?.writer === writer;
  const isForeign = (text: string | null): text is string => text !== null && text !== seen && !isOwn(text);
  return {
    writer,
    revision: () => revision,
    record: () => record,
    base: () => base,
    follow(localText, text, newest, head) {
      held = null;
      localHeld = null;
      seen = localText;
      started = { text, revision: newest };
      revision = newest;
      record = head;
      base = text !== null && text === localText && newest > (head ?? 0) ? { revision: newest, text } : null;
    },
    seeLocal(text) {
      seen = text;
      localHeld = null;
    },
    wroteLocal(text, written) {
      seen = text;
      revision = written;
    },
    wroteRecord(written) {
      revision = Math.max(revision, written);
      record = written;
      base = null;
    },
    hasSaved: () => seen !== null || (record ?? 0) > 0,
    isForeign,
    isNewer(text) {
      if (held === HELD_BEFORE_LOAD || !isForeign(text)) return false;
      const head = envelopeHead(text);
      const lost = record !== null && head?.writer != null && head.revision <= revision;
      return !lost;
    },
    isPast: ({ revision: found, text }) => isOwn(text) || (record === null && found <= started.revision),
    startedFrom: (text) => text === started.text,
    hold(sentence) {
      held = sentence;
    },
    holdLocal(sentence) {
      localHeld = sentence;
    },
    heldBecause: () => held,
    localHeldBecause: () => localHeld,
  };
}
