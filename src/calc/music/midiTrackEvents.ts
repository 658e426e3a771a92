/**
 * Walks the events of one track chunk and passes on those that a score needs, each complete and well formed,
 * so that the library that reads them afterwards never meets a broken one.
 *
 * Source: standardMidiFiles, "MTrk event": delta time as a variable-length quantity,
 * running status, meta events FF type length, system exclusive F0/F7 length.
 */

import { midiName } from "./midiText";

export interface CleanTrack {
  /** empty if the track has none */
  name: string;
  /** the kept events with their delta times, ended by an end-of-track event */
  bytes: number[];
  events: number;
  /** what was left out, a sentence each */
  reports: string[];
}

const META = 0xff;
const END_OF_TRACK = 0x2f;
const TRACK_NAME = 0x03;
const INSTRUMENT_NAME = 0x04;
const SET_TEMPO = 0x51;
const TEMPO_LENGTH = 3;
const LONGEST_QUANTITY = 4;

/** Why reading stopped before the track's end. */
class Broken extends Error {}

class Reader {
  position = 0;
  constructor(readonly bytes: Uint8Array) {}

  get ended(): boolean {
    return this.position >= this.bytes.length;
  }

  next(): number {
    if (this.ended) throw new Broken("the track ends inside an event");
    return this.bytes[this.position++];
  }

  take(length: number): Uint8Array {
    if (this.position + length > this.bytes.length) throw new Broken("an event is longer than the track");
    this.position += length;
    return this.bytes.subarray(this.position - length, this.position);
  }

  variableLength(): number {
    let value = 0;
    for (let count = 0; count < LONGEST_QUANTITY; count++) {
      const byte = this.next();
      value = value * 128 + (byte & 0x7f);
      if (byte < 0x80) return value;
    }
    throw new Broken("a length or a delta time has more than four bytes");
  }
}

/** A variable-length quantity, most significant seven bits first; at most 0x0FFFFFFF. */
export function variableLengthBytes(value: number): number[] {
  const bytes = [value % 128];
  for (let rest = Math.floor(value / 128); rest > 0; rest = Math.floor(rest / 128)) {
    bytes.unshift(128 + (rest % 128));
  }
  return bytes;
}

/** Number of data bytes of a channel message: one for program change and channel pressure, else two. */
function dataLength(status: number): number {
  const kind = status >> 4;
  return kind === 0xc || kind === 0xd ? 1 : 2;
}

/** A channel message, or null if a score does not read it (pressure). */
function channelMessage(reader: Reader, status: number, first: number | null): number[] | null {
  const data = first === null ? [] : [first];
  while (data.length < dataLength(status)) data.push(reader.next());
  if (data.some((byte) => byte > 0x7f)) throw new Broken("a data byte is out of range");
  const kind = status >> 4;
  return kind === 0xa || kind === 0xd ? null : [status, ...data];
}

/** State of the walk: the running status that the next event may rely on, and what the track is called. */
interface Walk {
  reader: Reader;
  runningStatus: number | null;
  name: string;
}

/** A meta event that a score reads, or null; names are kept here, because their texts are long and foreign. */
function metaEvent(walk: Walk): number[] | null {
  const type = walk.reader.next();
  const length = walk.reader.variableLength();
  const data = walk.reader.take(length);
  if (type === END_OF_TRACK) return [META, END_OF_TRACK, 0];
  if (type === TRACK_NAME || (type === INSTRUMENT_NAME && !walk.name))
    walk.name = midiName(data) || walk.name;
  return type === SET_TEMPO && length === TEMPO_LENGTH ? [META, type, TEMPO_LENGTH, ...data] : null;
}

/** One event without its delta time, or null if it is skipped. */
function nextEvent(walk: Walk): number[] | null {
  const { reader } = walk;
  const status = reader.next();
  if (status === META) return metaEvent(walk);
  if (status === 0xf0 || status === 0xf7) {
    reader.take(reader.variableLength());
    return null;
  }
  if (status > 0xf0) return null; // a system real-time or common byte that has no place in a file
  if (status >= 0x80) {
    walk.runningStatus = status;
    return channelMessage(reader, status, null);
  }
  if (walk.runningStatus === null) throw new Broken("there is a data byte where an event should begin");
  return channelMessage(reader, walk.runningStatus, status);
}

const LARGEST_DELTA = 0x0fffffff;

/**
 * Reads as much of one track chunk's data as can be read.
 * @param data the bytes after the chunk's length
 * @param called what to call the track in a report
 */
export function cleanTrack(data: Uint8Array, called: string): CleanTrack {
  const walk: Walk = { reader: new Reader(data), runningStatus: null, name: "" };
  const bytes: number[] = [];
  const reports: string[] = [];
  let waiting = 0;
  let events = 0;
  let ended = false;
  try {
    while (!ended && !walk.reader.ended) {
      waiting += walk.reader.variableLength();
      const event = nextEvent(walk);
      if (!event) continue;
      ended = event[0] === META && event[1] === END_OF_TRACK;
      for (const byte of variableLengthBytes(Math.min(waiting, LARGEST_DELTA))) bytes.push(byte);
      for (const byte of event) bytes.push(byte);
      waiting = 0;
      events++;
    }
  } catch (reason) {
    if (!(reason instanceof Broken)) throw reason;
    reports.push(`${called} was read up to its event ${events + 1}: ${reason.message}.`);
  }
  if (!ended) bytes.push(0, META, END_OF_TRACK, 0);
  return { name: walk.name, bytes, events, reports };
}
