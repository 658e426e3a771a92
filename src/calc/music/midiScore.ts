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
/** Twelve hours of one note at A4; a schedule of so many takes some ten seconds. */
const MOST_PULSES = 20_000_000;
const MOST_REPORTS = 20;
/** s; longer files have a broken delta time, or are no performance */
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
  if (zeros > 0) reports.push(`Tempos of zero were left out, the tempo before them goes on: ${zeros}.`);
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

/** A note that nothing ends is a broken file's; held to its end it would bury every other in pulses. */
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
  if (stuck > 0) reports.push(`Notes held for more than ten minutes end there: ${stuck}.`);
  return ended;
}

/** What a file without ends of its notes comes to. */
function reportUnheld(parts: readonly ScorePart[], reports: string[]): void {
  const unheld = parts.flatMap(({ notes }) => notes).filter(({ start, end }) => end <= start).length;
  if (unheld > 0) reports.push(`Notes that end as they begin, and do not sound: ${unheld}.`);
}

/** Pulses that the notes ask for as they are written, whatever a coil allows. */
function pulsesAsked(parts: readonly ScorePart[]): number {
  const ofNote = ({ start, end, key }: ScoreNote) => (end - start) * keyFrequency(key);
  return parts.reduce((sum, { notes }) => notes.reduce((inner, note) => inner + ofNote(note), sum), 0);
}

function firstOf(reports: readonly string[]): string[] {
  const more = reports.length - MOST_REPORTS;
  return more > 0 ? [...reports.slice(0, MOST_REPORTS), `And ${more} more such remarks.`] : [...reports];
}

/**
 * Reads a file as far as it can be read.
 * @param bytes the whole file
 * @returns the score with a report of what was left out, or one sentence why there is none
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
  if (parts.length === 0) return { ok: false, message: "This file can be read, but no note is in it." };
  if (parts.length > MOST_PARTS) {
    return {
      ok: false,
      message: `This file holds ${parts.length} parts, and at most ${MOST_PARTS} are read. Open one with fewer.`,
    };
  }
  if (lastEnd(parts) > LONGEST) {
    return {
      ok: false,
      message: "By its delta times this file lasts more than six hours; one of them is broken.",
    };
  }
  const ended = endStuckNotes(parts, reports);
  reportUnheld(ended, reports);
  const pulses = pulsesAsked(ended);
  if (pulses > MOST_PULSES) {
    const millions = Math.ceil(pulses / 1e6);
    return {
      ok: false,
      message: `The notes of this file ask for ${millions} million pulses, and at most ${MOST_PULSES / 1e6} million are made. Open a shorter one, or one with fewer parts.`,
    };
  }
  return {
    ok: true,
    score: { parts: ended, duration: lastEnd(ended), tempos: map.tempos, reports: firstOf(reports) },
  };
}
