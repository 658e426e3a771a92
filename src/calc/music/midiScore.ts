/**
 * From the bytes of a Standard MIDI File to a score.
 *
 * Source: standardMidiFiles; midi.
 */
import { type MidiEvent, parseMidi } from "midi-file";
import { type ChannelEvent, channelNotes } from "./channelNotes";
import { keyFrequency } from "./equalTemperament";
import { midiChunks } from "./midiChunks";
import type { CleanTrack } from "./midiTrackEvents";
import { MOST_PARTS, type Score, type ScoreNote, type ScorePart } from "./score";
import { type TempoMap, type TempoMark, tempoMap } from "./tempoMap";

export type MidiReading = { ok: true; score: Score } | { ok: false; message: string };

interface Timed {
  tick: number;
  event: MidiEvent;
}

interface Track {
  name: string;
  events: Timed[];
}

const PERCUSSION_CHANNEL = 9;
const MOST_EVENTS = 1_000_000;
/** Twelve hours of one note at A4; a schedule with so many takes about ten seconds. */
const MOST_PULSES = 20_000_000;
const MOST_REPORTS = 20;
/** s; longer files have a damaged delta time, or are not a performance */
const LONGEST = 6 * 3600;
/** s; common practice, no source */
const LONGEST_NOTE = 600;

/** One clean track as a whole file of format 0, which is what the library reads. */
function trackFile(bytes: readonly number[], division: number): number[] {
  const length = [24, 16, 8, 0].map((shift) => (bytes.length >>> shift) & 0xff);
  return [
    0x4d,
    0x54,
    0x68,
    0x64,
    0,
    0,
    0,
    6,
    0,
    0,
    0,
    1,
    division >> 8,
    division & 0xff,
    0x4d,
    0x54,
    0x72,
    0x6b,
    ...length,
  ].concat(bytes);
}

function readTrack({ bytes, name }: CleanTrack, division: number, index: number): Track {
  const [events] = parseMidi(trackFile(bytes, division)).tracks;
  let tick = 0;
  const timed = events.map((event) => {
    tick += event.deltaTime;
    return { tick, event };
  });
  return { name: name || `Track ${index + 1}`, events: timed };
}

function tempoMarks(tracks: readonly Track[], reports: string[]): TempoMark[] {
  const marks: TempoMark[] = [];
  let zeros = 0;
  for (const { events } of tracks) {
    for (const { tick, event } of events) {
      if (event.type !== "setTempo") continue;
      if (event.microsecondsPerBeat > 0) marks.push({ tick, microsecondsPerBeat: event.microsecondsPerBeat });
      else zeros++;
    }
  }
  if (zeros > 0) reports.push(`Tempos of zero were ignored; the previous tempo continues: ${zeros}.`);
  return marks.sort((a, b) => a.tick - b.tick);
}

function channelEvent(event: MidiEvent, time: number): ChannelEvent | null {
  switch (event.type) {
    case "noteOn":
      return { kind: "note on", time, key: event.noteNumber, velocity: event.velocity };
    case "noteOff":
      return { kind: "note off", time, key: event.noteNumber };
    case "controller":
      return { kind: "controller", time, controller: event.controllerType, value: event.value };
    case "pitchBend":
      return { kind: "bend", time, value: event.value };
    default:
      return null;
  }
}

function eventsByChannel(track: Track, map: TempoMap): Map<number, ChannelEvent[]> {
  const channels = new Map<number, ChannelEvent[]>();
  for (const { tick, event } of track.events) {
    if (!("channel" in event) || event.type === "channelPrefix") continue;
    const converted = channelEvent(event, map.secondsAt(tick));
    if (!converted) continue;
    const events = channels.get(event.channel);
    if (events) events.push(converted);
    else channels.set(event.channel, [converted]);
  }
  return channels;
}

function trackParts(track: Track, index: number, map: TempoMap): ScorePart[] {
  const end = map.secondsAt(track.events[track.events.length - 1]?.tick ?? 0);
  return [...eventsByChannel(track, map)].map(([channel, events]) => ({
    id: `${index + 1}:${channel + 1}`,
    track: index + 1,
    channel: channel + 1,
    name: track.name,
    percussion: channel === PERCUSSION_CHANNEL,
    ...channelNotes(events, end),
  }));
}

/** s */
function lastEnd(parts: readonly ScorePart[]): number {
  return parts.reduce((last, part) => part.notes.reduce((end, note) => Math.max(end, note.end), last), 0);
}

/** Ends notes that the file never ends; held to the file's end, their pulses would crowd out all others. */
function endStuckNotes(parts: readonly ScorePart[], reports: string[]): ScorePart[] {
  let stuck = 0;
  const ended = parts.map((part) => ({
    ...part,
    notes: part.notes.map((note) => {
      if (note.end - note.start <= LONGEST_NOTE) return note;
      stuck++;
      return { ...note, end: note.start + LONGEST_NOTE };
    }),
  }));
  if (stuck > 0) reports.push(`Notes held for more than ten minutes were ended there: ${stuck}.`);
  return ended;
}

/** Reports notes without a duration. */
function reportUnheld(parts: readonly ScorePart[], reports: string[]): void {
  const unheld = parts.flatMap(({ notes }) => notes).filter(({ start, end }) => end <= start).length;
  if (unheld > 0) reports.push(`Notes of zero length, which do not sound: ${unheld}.`);
}

/** Pulses of the notes as written, without the limits of any coil. */
function pulsesAsked(parts: readonly ScorePart[]): number {
  const ofNote = ({ start, end, key }: ScoreNote) => (end - start) * keyFrequency(key);
  return parts.reduce((sum, { notes }) => notes.reduce((inner, note) => inner + ofNote(note), sum), 0);
}

function firstOf(reports: readonly string[]): string[] {
  const more = reports.length - MOST_REPORTS;
  return more > 0 ? [...reports.slice(0, MOST_REPORTS), `And ${more} more remarks.`] : [...reports];
}

/**
 * Reads as much of a file as can be read.
 * @param bytes the whole file
 * @returns the score with reports of what was left out, or a sentence that says why there is none
 */
export function midiScore(bytes: Uint8Array): MidiReading {
  const chunks = midiChunks(bytes);
  if (!chunks.ok) return chunks;
  const { division } = chunks.header;
  if (chunks.tracks.reduce((sum, track) => sum + track.events, 0) > MOST_EVENTS) {
    return { ok: false, message: "This file holds more than a million events. Open a shorter one." };
  }
  const reports = [...chunks.reports];
  const tracks = chunks.tracks.map((track, index) => readTrack(track, division, index));
  const map = tempoMap(division, tempoMarks(tracks, reports));
  const parts = tracks
    .flatMap((track, index) => trackParts(track, index, map))
    .filter((part) => part.notes.length > 0);
  if (parts.length === 0) return { ok: false, message: "This file can be read but contains no notes." };
  if (parts.length > MOST_PARTS) {
    return {
      ok: false,
      message: `This file has ${parts.length} parts; at most ${MOST_PARTS} can be read. Open one with fewer.`,
    };
  }
  if (lastEnd(parts) > LONGEST) {
    return {
      ok: false,
      message:
        "According to its delta times this file lasts more than six hours; one of them must be damaged.",
    };
  }
  const ended = endStuckNotes(parts, reports);
  reportUnheld(ended, reports);
  const pulses = pulsesAsked(ended);
  if (pulses > MOST_PULSES) {
    const millions = Math.ceil(pulses / 1e6);
    return {
      ok: false,
      message: `The notes of this file need ${millions} million pulses; at most ${MOST_PULSES / 1e6} million can be made. Open a shorter one, or one with fewer parts.`,
    };
  }
  return {
    ok: true,
    score: { parts: ended, duration: lastEnd(ended), tempos: map.tempos, reports: firstOf(reports) },
  };
}
