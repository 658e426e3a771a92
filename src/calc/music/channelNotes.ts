/**
 * From the events of one channel to notes with a start and an end: key up, sustain pedal, bend,
 * volume and expression.
 *
 * Source: MIDI 1.0 Detailed Specification: note on with velocity 0 is a note off; controllers 7
 * (volume), 11 (expression), 64 (sustain), 120 and 123 (all sound, all notes off), 121 (reset); pitch
 * bend ± 2 semitones unless registered parameter 0 says otherwise; volume starts at 100.
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

interface Sounding {
  note: ScoreNote;
  /** key is up, the pedal alone holds it */
  held: boolean;
}

interface Channel extends ChannelNotes {
  sounding: Sounding[];
  pedal: boolean;
  volume: number;
  expression: number;
  bend: number;
  bendRange: number;
  parameterLow: number;
  parameterHigh: number;
}

function silence(channel: Channel, time: number, which: (sounding: Sounding) => boolean): void {
  for (const sounding of channel.sounding.filter(which)) sounding.note.end = time;
  channel.sounding = channel.sounding.filter((sounding) => !which(sounding));
}

function keyUp(channel: Channel, time: number, key: number): void {
  const sounding = channel.sounding.find((candidate) => candidate.note.key === key && !candidate.held);
  if (!sounding) return;
  sounding.held = true;
  if (!channel.pedal) silence(channel, time, (candidate) => candidate === sounding);
}

function keyDown(channel: Channel, time: number, key: number, velocity: number): void {
  // a key struck again while the pedal holds it starts a new note
  silence(channel, time, (candidate) => candidate.held && candidate.note.key === key);
  const note = { start: time, end: Number.POSITIVE_INFINITY, key, velocity: velocity / FULL };
  channel.notes.push(note);
  channel.sounding.push({ note, held: false });
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
    if (!channel.pedal) silence(channel, time, (sounding) => sounding.held);
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
  [ALL_SOUND_OFF]: (channel, time) => silence(channel, time, () => true),
  [ALL_NOTES_OFF]: (channel, time) => silence(channel, time, () => true),
  [RESET]: (channel, time) => {
    channel.pedal = false;
    silence(channel, time, (sounding) => sounding.held);
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

/** Level of a channel before it says anything: volume 100, expression full. */
export const INITIAL_LEVEL = 100 / FULL;

/**
 * Notes of a channel.
 * @param events in order of time
 * @param end s, when whatever still sounds falls silent
 */
export function channelNotes(events: readonly ChannelEvent[], end: number): ChannelNotes {
  const channel: Channel = {
    notes: [],
    bends: [],
    levels: [],
    sounding: [],
    pedal: false,
    volume: 100,
    expression: FULL,
    bend: 0,
    bendRange: 2,
    parameterLow: FULL,
    parameterHigh: FULL,
  };
  for (const event of events) take(channel, event);
  silence(channel, end, () => true);
  return { notes: channel.notes, bends: channel.bends, levels: channel.levels };
}
