/** What this tab has read and written: from it follows what it may write over. */
import { envelopeHead } from "./loadedShow";

export interface Following {
  /** this page, in the envelopes that it writes */
  readonly writer: string;
  /** highest revision that this tab has read or written */
  revision(): number;
  /** newest record of the journal that this tab follows; null where it could not be read */
  record(): number | null;
  /** What this tab started from, where the journal has it not yet. */
  base(): { revision: number; text: string } | null;
  /** Takes what was just read as this tab's own past; opens saving. */
  follow(localText: string | null, text: string | null, revision: number, record: number | null): void;
  /** Notes a text in local storage as seen; opens writing there. */
  seeLocal(text: string | null): void;
  wroteLocal(text: string, revision: number): void;
  wroteRecord(revision: number): void;
  hasSaved(): boolean;
  /** Whether the text of local storage is neither seen nor written by this tab. */
  isForeign(text: string | null): boolean;
  /**
   * Whether the text of local storage is a newer state than this tab follows. Where the journal
   * decides, one of no higher revision is the trace of a tab that has lost there.
   */
  isNewer(text: string | null): boolean;
  /** Whether a record that this tab has not read is one of its past: its own, or older than what it started from. */
  isPast(record: { revision: number; text: string }): boolean;
  /** Whether this tab started from that text. */
  startedFrom(text: string): boolean;
  hold(sentence: string | null): void;
  holdLocal(sentence: string | null): void;
  heldBecause(): string | null;
  localHeldBecause(): string | null;
}

const HELD_BEFORE_LOAD = "Nothing is saved before the kept show has been read.";

/** Makes what a page knows before it has read anything. */
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
