/** Which of the kept states opens: the newest that can be read. What is not an earlier state of it is kept aside. */
import type { JournalRecord } from "./journal";
import { type EnvelopeHead, envelopeHead, type LoadedShow, type ReadShow, readKeptText } from "./loadedShow";

/** Text that is kept as a version, because what opens does not follow from it. */
export interface Aside {
  text: string;
  reading: LoadedShow;
  /** whether it is work that can be opened and that its owner has not seen go */
  offered: boolean;
}

export type Ok = Extract<LoadedShow, { kind: "ok" }>;
export type Unreadable = Exclude<LoadedShow, { kind: "ok" } | { kind: "nothing" }>;

export interface Resolution {
  /** what opens, or why nothing does */
  loaded: LoadedShow;
  /** the text of what opens, or of what cannot be read */
  text: string | null;
  /** the newest state that can be read, for where a newer build's is kept and stays closed */
  fallback: Ok | null;
  /** what local storage holds and cannot be read; null where all is well */
  unreadable: { text: string; reading: Unreadable } | null;
  /** highest revision met, readable or not */
  revision: number;
  /** revision of the newest record of the journal; 0 where there is none */
  head: number;
  aside: readonly Aside[];
}

interface Read {
  text: string;
  reading: LoadedShow;
}

/** The newest record that can be read or was written by a newer build, and the unreadable ones above it. */
function newestOfJournal(records: readonly JournalRecord[], read: (text: string) => LoadedShow) {
  const broken: Read[] = [];
  for (const { text } of records) {
    const reading = read(text);
    if (reading.kind === "ok" || reading.kind === "too new") return { newest: { text, reading }, broken };
    broken.push({ text, reading });
  }
  return { newest: null, broken };
}

/** Whether one page wrote both, and so one of them after the other. */
function sameWriter(one: EnvelopeHead | null, other: EnvelopeHead | null): boolean {
  return one?.writer != null && one.writer === other?.writer;
}

/** Whether local storage's text is an earlier state of what the journal holds. */
function isAncestor(localText: string, records: readonly JournalRecord[]): boolean {
  if (records.some((record) => record.text === localText)) return true;
  const head = envelopeHead(localText);
  if (sameWriter(head, envelopeHead(records[0].text))) return true;
  if (head?.writer == null || head.follows === null) return false;
  return head.revision < records[records.length - 1].revision;
}

/** Whether local storage's text, the newer one, was written in knowledge of the journal's newest record. */
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

/** What is not an earlier state of the winner. */
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
 * Resolves what local storage and the journal hold.
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
