/**
 * From the events of one channel to notes with a start and an end: key up, sustain pedal, bend,
 * volume and expression.
 *
 * Source: midi: note on with velocity 0 is a note off, controllers 7
 * (volume), 11 (expression), 64 (sustain), 120 and 123 (all sound, all notes off), 121 (reset), pitch
 * bend ± 2 semitones unless registered parameter 0 says otherwise, volume starts at 100.
 */
import type { Change, ScoreNote } from "./score";

export type ChannelEvent =
  | { kind: "note on"; time: number; key: number; velocity: number }
  | { kind: "note off"; time: number; key: number }
  | { kind: "controller"; time: number; controller: number; value: number }
  | { kind: "bend"; time: number; value: number };

export interface ChannelNotes {
  notes: ScoreNote[];
  bends: Change[];
  levels: Change[];
}

const VOLUME = 7;
const EXPRESSION = 11;
const DATA_ENTRY = 6;
const SUSTAIN = 64;
const PARAMETER_LOW = 100;
const PARAMETER_HIGH = 101;
const ALL_SOUND_OFF = 120;
const RESET = 121;
const ALL_NOTES_OFF = 123;
const FULL = 127;
const BEND_FULL = 8192;

/** The sounding notes of one key, oldest first. */
interface KeyNotes {
  /** key is down; notes before `first` have been released */
  pressed: ScoreNote[];
  first: number;
  /** key is up; only the pedal holds them */
  held: ScoreNote[];
}

interface Channel extends ChannelNotes {
  keys: Map<number, KeyNotes>;
  pedal: boolean;
  volume: number;
  expression: number;
  bend: number;
  bendRange: number;
  parameterLow: number;
  parameterHigh: number;
}

function keyNotes(channel: Channel, key: number): KeyNotes {
  const known = channel.keys.get(key);
  if (known) return known;
  const made: KeyNotes = { pressed: [], first: 0, held: [] };
  channel.keys.set(key, made);
  return made;
}

function silenceHeld(notes: KeyNotes, time: number): void {
  for (const note of notes.held) note.end = time;
  notes.held = [];
}

function pedalUp(channel: Channel, time: number): void {
  for (const notes of channel.keys.values()) silenceHeld(notes, time);
}

function silenceAll(channel: Channel, time: number): void {
  pedalUp(channel, time);
  for (const { pressed, first } of channel.keys.values())
    for (let index = first; index < pressed.length; index++) pressed[index].end = time;
  channel.keys.clear();
}

function keyUp(channel: Channel, time: number, key: number): void {
  const notes = keyNotes(channel, key);
  if (notes.first === notes.pressed.length) return;
  const note = notes.pressed[notes.first++];
  if (channel.pedal) notes.held.push(note);
  else note.end = time;
}

function keyDown(channel: Channel, time: number, key: number, velocity: number): void {
  const notes = keyNotes(channel, key);
  // a key struck again while the pedal holds it starts a new note
  silenceHeld(notes, time);
  const note = { start: time, end: Number.POSITIVE_INFINITY, key, velocity: velocity / FULL };
  channel.notes.push(note);
  notes.pressed.push(note);
}

function noteLevel(channel: Channel, time: number): void {
  channel.levels.push({ time, value: (channel.volume / FULL) * (channel.expression / FULL) });
}

function noteBend(channel: Channel, time: number): void {
  channel.bends.push({ time, value: (channel.bend / BEND_FULL) * channel.bendRange });
}

const CONTROLLERS: Record<number, (channel: Channel, time: number, value: number) => void> = {
  [VOLUME]: (channel, time, value) => {
    channel.volume = value;
    noteLevel(channel, time);
  },
  [EXPRESSION]: (channel, time, value) => {
    channel.expression = value;
    noteLevel(channel, time);
  },
  [SUSTAIN]: (channel, time, value) => {
    channel.pedal = value >= 64;
    if (!channel.pedal) pedalUp(channel, time);
  },
  [PARAMETER_LOW]: (channel, _, value) => {
    channel.parameterLow = value;
  },
  [PARAMETER_HIGH]: (channel, _, value) => {
    channel.parameterHigh = value;
  },
  [DATA_ENTRY]: (channel, time, value) => {
    if (channel.parameterHigh !== 0 || channel.parameterLow !== 0) return;
    channel.bendRange = value;
    noteBend(channel, time);
  },
  [ALL_SOUND_OFF]: silenceAll,
  [ALL_NOTES_OFF]: silenceAll,
  [RESET]: (channel, time) => {
    channel.pedal = false;
    pedalUp(channel, time);
    channel.expression = FULL;
    channel.bend = 0;
    noteLevel(channel, time);
    noteBend(channel, time);
  },
};

function take(channel: Channel, event: ChannelEvent): void {
  if (event.kind === "note on") keyDown(channel, event.time, event.key, event.velocity);
  else if (event.kind === "note off") keyUp(channel, event.time, event.key);
  else if (event.kind === "controller") CONTROLLERS[event.controller]?.(channel, event.time, event.value);
  else {
    channel.bend = event.value;
    noteBend(channel, event.time);
  }
}

/** Initial level of a channel: volume 100, full expression. */
export const INITIAL_LEVEL = 100 / FULL;

/**
 * Notes of a channel.
 * @param events in order of time
 * @param end s, when notes that still sound are ended
 */
export function channelNotes(events: readonly ChannelEvent[], end: number): ChannelNotes {
  const channel: Channel = {
    notes: [],
    bends: [],
    levels: [],
    keys: new Map(),
    pedal: false,
    volume: 100,
    expression: FULL,
    bend: 0,
    bendRange: 2,
    parameterLow: FULL,
    parameterHigh: FULL,
  };
  for (const event of events) take(channel, event);
  silenceAll(channel, end);
  return { notes: channel.notes, bends: channel.bends, levels: channel.levels };
}
