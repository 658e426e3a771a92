/** Decides which stored state opens: the newest readable one. States that are no predecessors of it are saved as versions. */
import type { JournalRecord } from "./journal";
import { type EnvelopeHead, envelopeHead, type LoadedShow, type ReadShow, readKeptText } from "./loadedShow";

/** Text to save as a version, because the opened state does not derive from it. */
export interface Aside {
  text: string;
  reading: LoadedShow;
  /** whether it is readable work that the user has not seen being replaced */
  offered: boolean;
}

export type Ok = Extract<LoadedShow, { kind: "ok" }>;
export type Unreadable = Exclude<LoadedShow, { kind: "ok" } | { kind: "nothing" }>;

export interface Resolution {
  /** the show that opens, or why none does */
  loaded: LoadedShow;
  /** its text, or the text that cannot be read */
  text: string | null;
  /** the newest readable state, used if the stored show is from a newer build */
  fallback: Ok | null;
  /** unreadable data in local storage; null if there are none */
  unreadable: { text: string; reading: Unreadable } | null;
  /** highest revision found, readable or not */
  revision: number;
  /** revision of the newest record of the journal; 0 if there is none */
  head: number;
  aside: readonly Aside[];
}

interface Read {
  text: string;
  reading: LoadedShow;
}

/** The newest record that is readable or from a newer build, and the unreadable ones after it. */
function newestOfJournal(records: readonly JournalRecord[], read: (text: string) => LoadedShow) {
  const broken: Read[] = [];
  for (const { text } of records) {
    const reading = read(text);
    if (reading.kind === "ok" || reading.kind === "too new") return { newest: { text, reading }, broken };
    broken.push({ text, reading });
  }
  return { newest: null, broken };
}

/** Whether the same page wrote both, one after the other. */
function sameWriter(one: EnvelopeHead | null, other: EnvelopeHead | null): boolean {
  return one?.writer != null && one.writer === other?.writer;
}

/** Whether the text in local storage is an earlier state of the journal's. */
function isAncestor(localText: string, records: readonly JournalRecord[]): boolean {
  if (records.some((record) => record.text === localText)) return true;
  const head = envelopeHead(localText);
  if (sameWriter(head, envelopeHead(records[0].text))) return true;
  if (head?.writer == null || head.follows === null) return false;
  return head.revision < records[records.length - 1].revision;
}

/** Whether the newer text in local storage was written after its page had read the journal's newest record. */
function follows(localText: string, records: readonly JournalRecord[]): boolean {
  const head = envelopeHead(localText);
  if (sameWriter(head, envelopeHead(records[0].text))) return true;
  return head?.follows != null && head.follows >= records[0].revision;
}

function isOk(reading: LoadedShow | undefined): reading is Ok {
  return reading?.kind === "ok";
}

function unreadableOf(local: Read | null): Resolution["unreadable"] {
  if (!local || local.reading.kind === "ok" || local.reading.kind === "nothing") return null;
  return { text: local.text, reading: local.reading };
}

/** The states that are no predecessors of the winner. */
function asideOf(
  winner: Read | null,
  local: Read | null,
  newest: Read | null,
  records: readonly JournalRecord[],
): Aside[] {
  if (!local || !newest || !winner) return [];
  if (winner === local) return follows(local.text, records) ? [] : [{ ...newest, offered: true }];
  return isAncestor(local.text, records) ? [] : [{ ...local, offered: isOk(local.reading) }];
}

/**
 * Resolves the states in local storage and in the journal.
 * @param records newest first
 */
export function resolveKept(
  localText: string | null,
  records: readonly JournalRecord[],
  readShow: ReadShow,
): Resolution {
  const known = new Map<string, LoadedShow>();
  const read = (text: string) => {
    const reading = known.get(text) ?? readKeptText(text, readShow);
    known.set(text, reading);
    return reading;
  };
  const { newest, broken } = newestOfJournal(records, read);
  const local = localText === null ? null : { text: localText, reading: read(localText) };
  const localOk = isOk(local?.reading) ? local.reading : null;
  const journalOk = isOk(newest?.reading) ? newest.reading : null;
  const localWins = localOk !== null && localOk.revision > (journalOk?.revision ?? 0);
  const winner = localWins ? local : journalOk ? newest : null;
  const tooNew = [local, newest].find((each) => each?.reading.kind === "too new") ?? null;
  const shown = tooNew ?? winner ?? local ?? broken[0];
  const head = records[0]?.revision ?? 0;
  return {
    loaded: shown?.reading ?? { kind: "nothing" },
    text: shown?.text ?? null,
    fallback: localWins ? localOk : journalOk,
    unreadable: unreadableOf(local),
    revision: Math.max(head, localOk?.revision ?? 0, journalOk?.revision ?? 0),
    head,
    aside: [
      ...broken.map((each) => ({ ...each, offered: false })),
      ...asideOf(winner, local, newest, records),
    ],
  };
}
