/**
 * A pre-pass over the chunks of a Standard MIDI File: unwraps a RIFF container, skips chunks of other
 * kinds, corrects lengths that run past the end, and reports what it did.
 *
 * Source: standardMidiFiles, "Chunks" and "Header chunks".
 */
import { type CleanTrack, cleanTrack } from "./midiTrackEvents";

interface MidiHeader {
  format: number;
  /** the 16 bits of the header's division word */
  division: number;
}

type MidiChunks =
  | { ok: true; header: MidiHeader; tracks: CleanTrack[]; reports: string[] }
  | { ok: false; message: string };

const HEADER_LENGTH = 6;
const CHUNK_HEAD = 8;
const MOST_TRACKS = 1000;

function idAt(bytes: Uint8Array, offset: number): string {
  return String.fromCharCode(...bytes.subarray(offset, offset + 4));
}

function view(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

/** The file inside a RIFF "RMID" container, or the bytes as they are. */
function unwrapped(bytes: Uint8Array): Uint8Array {
  if (bytes.length < 20 || idAt(bytes, 0) !== "RIFF" || idAt(bytes, 8) !== "RMID") return bytes;
  for (let offset = 12; offset + CHUNK_HEAD <= bytes.length; ) {
    const length = view(bytes).getUint32(offset + 4, true);
    if (idAt(bytes, offset) === "data")
      return bytes.subarray(offset + CHUNK_HEAD, offset + CHUNK_HEAD + length);
    offset += CHUNK_HEAD + length + (length % 2);
  }
  return bytes;
}

function readHeader(bytes: Uint8Array): MidiHeader | string {
  if (bytes.length < CHUNK_HEAD + HEADER_LENGTH || idAt(bytes, 0) !== "MThd") {
    return "This is not a Standard MIDI File: it does not begin with a header chunk “MThd”.";
  }
  const header = view(bytes);
  const format = header.getUint16(8);
  const division = header.getUint16(12);
  if (format > 1)
    return `This file has format ${format}; formats 0 and 1 can be opened. Save it again as format 1.`;
  const ticks = division & 0x8000 ? division & 0xff : division;
  if (ticks === 0)
    return "This file's header specifies zero ticks per beat or frame, so its notes have no times.";
  return { format, division };
}

/**
 * Splits a file into its header and clean tracks.
 * @param file the whole file
 */
export function midiChunks(file: Uint8Array): MidiChunks {
  const bytes = unwrapped(file);
  const header = readHeader(bytes);
  if (typeof header === "string") return { ok: false, message: header };
  const announced = view(bytes).getUint16(10);
  const tracks: CleanTrack[] = [];
  const reports: string[] = [];
  let offset = CHUNK_HEAD + Math.max(HEADER_LENGTH, view(bytes).getUint32(4));
  while (offset + CHUNK_HEAD <= bytes.length && tracks.length < MOST_TRACKS) {
    const id = idAt(bytes, offset);
    const length = view(bytes).getUint32(offset + 4);
    const data = bytes.subarray(offset + CHUNK_HEAD, offset + CHUNK_HEAD + length);
    if (id === "MTrk") {
      const name = `Track ${tracks.length + 1}`;
      if (data.length < length)
        reports.push(`${name} is cut short: it has ${data.length} of ${length} bytes.`);
      const track = cleanTrack(data, name);
      reports.push(...track.reports);
      tracks.push(track);
    }
    offset += CHUNK_HEAD + length;
  }
  if (tracks.length === 0) return { ok: false, message: "This file has a header but no readable track." };
  if (tracks.length < announced)
    reports.push(`The header announces ${announced} tracks; the file has ${tracks.length}.`);
  return { ok: true, header, tracks, reports };
}
