/**
 * From a score and its lanes to one gate per coil. Every note is a train of pulses at its frequency;
 * several voices are merged into one gate that keeps every limit. Whatever is shortened, delayed or
 * dropped is counted and reported.
 */

import { INITIAL_LEVEL } from "./channelNotes";
import { keyFrequency } from "./equalTemperament";
import { type Change, type Gate, GateBuilder } from "./gate";
import { type Coil, type CoilLimits, type Expression, type Lane, playsOn } from "./lane";
import { allowedOnTime, wantedOnTime } from "./noteOnTime";
import { type Score, valueAtTime } from "./score";
import { sharedOnTimes } from "./sharedOnTimes";
import { allotVoices, type CoilNote } from "./voices";

export type NoteFate = "played" | "shortened" | "dropped";

export interface NoteOutcome {
  part: string;
  key: number;
  /** s, as written */
  start: number;
  end: number;
  fate: NoteFate;
  /** what was changed; empty if it was played as written */
  reasons: string[];
  pulses: number;
}

export interface CoilSchedule {
  gate: Gate;
  /** every note that a lane sends to this coil */
  notes: NoteOutcome[];
  /** number of pulses by the reason of their change */
  changes: Record<Change, number>;
}

/** A delay of this part of a period is not heard as another pitch; common practice, no source. */
export const PATIENCE_IN_PERIODS = 0.125;
const LOWEST_RATE = 0.1;
/** Hz, of the highest audible notes; a lane may transpose a note far beyond. Common practice, no source. */
const HIGHEST_RATE = 20_000;
/** Pulses, some milliseconds of work, between progress reports. */
const PULSES_BETWEEN_WORDS = 1024;

interface Tone {
  /** Hz */
  rate: number;
  /** s */
  allowed: number;
}

interface PlayingNote {
  note: CoilNote;
  outcome: NoteOutcome;
  tone: Tone;
  /** s, the share that the other notes leave */
  shared: number;
  /** s */
  next: number;
}

function rateAt(note: CoilNote, time: number): number {
  return Math.max(LOWEST_RATE, keyFrequency(note.key + valueAtTime(note.bends, time, 0)));
}

function toneAt(limits: CoilLimits, note: CoilNote, time: number): Tone {
  const rate = rateAt(note, time);
  return { rate, allowed: allowedOnTime(limits, rate) };
}

function notesForCoil(
  score: Score,
  lanes: readonly Lane[],
  coil: Coil,
): { notes: CoilNote[]; outcomes: NoteOutcome[] } {
  const notes: CoilNote[] = [];
  const outcomes: NoteOutcome[] = [];
  for (const lane of lanes.filter((candidate) => playsOn(candidate, coil))) {
    const part = score.parts.find((candidate) => candidate.id === lane.part);
    if (!part) continue;
    for (const { start, end, key, velocity } of part.notes) {
      const index = outcomes.length;
      outcomes.push({
        part: part.id,
        key: key + lane.transpose,
        start,
        end,
        fate: "played",
        reasons: [],
        pulses: 0,
      });
      notes.push({
        index,
        start,
        end,
        key: key + lane.transpose,
        strength: velocity * lane.level,
        bends: part.bends,
        levels: part.levels,
      });
    }
  }
  return { notes, outcomes };
}

/** Shares the limits again among the notes that sound at a time, by the on-time of each at its channel's full level. */
function share(
  playing: readonly PlayingNote[],
  time: number,
  limits: CoilLimits,
  expression: Expression,
): void {
  const sounding = playing.filter(({ note }) => note.end > time);
  const asked = sounding.map(({ note, tone: { rate } }) => ({
    rate,
    onTime: wantedOnTime(expression, note.strength, rate),
  }));
  const shared = sharedOnTimes(limits, asked);
  sounding.forEach((voice, index) => {
    voice.shared = shared[index];
  });
}

function addReason(outcome: NoteOutcome, reason: string): void {
  if (!outcome.reasons.includes(reason)) outcome.reasons.push(reason);
}

/** The playing note whose next pulse comes first; null if none plays. */
function earliest(playing: readonly PlayingNote[]): PlayingNote | null {
  let first: PlayingNote | null = null;
  for (const candidate of playing) if (!first || candidate.next < first.next) first = candidate;
  return first;
}

function cause(allowed: number, shared: number): Change {
  return shared < allowed ? "shortened beside others" : "shortened by limit";
}

function offerPulse(
  builder: GateBuilder,
  limits: CoilLimits,
  expression: Expression,
  voice: PlayingNote,
): Change | null {
  const { note, outcome, next: time } = voice;
  if (note.bends.length > 0) voice.tone = toneAt(limits, note, time);
  const { rate, allowed } = voice.tone;
  if (rate > HIGHEST_RATE) {
    addReason(outcome, "too high to be heard");
    voice.next = time + 1 / HIGHEST_RATE;
    return null;
  }
  const level = valueAtTime(note.levels, time, INITIAL_LEVEL) / INITIAL_LEVEL;
  const wanted = wantedOnTime(expression, note.strength * Math.min(1, level), rate);
  const most = Math.min(allowed, voice.shared);
  const change =
    builder.offer(time, Math.min(wanted, most), PATIENCE_IN_PERIODS / rate) ??
    (wanted > most ? cause(allowed, voice.shared) : null);
  if (change === null || !SILENCING.has(change)) outcome.pulses++;
  if (change && change !== "delayed") addReason(outcome, change);
  voice.next = time + 1 / rate;
  return change;
}

function settleFates(outcomes: NoteOutcome[]): void {
  for (const outcome of outcomes) {
    if (outcome.pulses === 0) outcome.fate = "dropped";
    else if (outcome.reasons.length > 0) outcome.fate = "shortened";
  }
}

/** Changes after which no pulse is left. */
const SILENCING: ReadonlySet<Change> = new Set<Change>([
  "too short to sound",
  "dropped for the gap",
  "dropped for duty",
  "dropped for load",
]);

const NO_CHANGES: Record<Change, number> = {
  delayed: 0,
  "shortened by duty": 0,
  "shortened by load": 0,
  "shortened beside others": 0,
  "shortened by limit": 0,
  "too short to sound": 0,
  "dropped for the gap": 0,
  "dropped for duty": 0,
  "dropped for load": 0,
};

/**
 * One coil's gate.
 * @param onProgress called at intervals with the share that is done, 0 … 1; returning false cancels
 * @returns null if it was cancelled
 */
export function coilSchedule(
  score: Score,
  lanes: readonly Lane[],
  coil: Coil,
  limits: CoilLimits,
  expression: Expression,
  onProgress?: (done: number) => boolean,
): CoilSchedule | null {
  const { notes, outcomes } = notesForCoil(score, lanes, coil);
  const allotted = allotVoices(notes, limits.voices);
  for (const index of allotted.cut) addReason(outcomes[index], "gave way to another note");
  for (const index of allotted.dropped) addReason(outcomes[index], "no voice free");
  const builder = new GateBuilder(limits);
  const changes = { ...NO_CHANGES };
  let playing: PlayingNote[] = [];
  let waiting = 0;
  let pulses = 0;
  const goesOn = () => onProgress?.(waiting / allotted.notes.length) ?? true;
  while (waiting < allotted.notes.length || playing.length > 0) {
    const voice = earliest(playing);
    const following = allotted.notes[waiting];
    if (!voice || (following && following.start <= voice.next)) {
      const tone = toneAt(limits, following, following.start);
      const { start, index } = following;
      const shared = Number.POSITIVE_INFINITY;
      playing.push({ note: following, outcome: outcomes[index], tone, shared, next: start });
      share(playing, start, limits, expression);
      waiting++;
      continue;
    }
    if (voice.next >= voice.note.end) {
      playing = playing.filter((candidate) => candidate !== voice);
      share(playing, voice.next, limits, expression);
    } else {
      const change = offerPulse(builder, limits, expression, voice);
      if (change) changes[change]++;
      pulses++;
      if (pulses % PULSES_BETWEEN_WORDS === 0 && !goesOn()) return null;
    }
  }
  settleFates(outcomes);
  return { gate: builder.gate, notes: outcomes, changes };
}
