/** Small Standard MIDI Files for the tests, written by the library's own writer or from the specification. */
import { readFileSync } from "node:fs";
import { type MidiData, type MidiEvent, writeMidi } from "midi-file";

/** An example file of the Standard MIDI File 1.0 specification (RP-001, appendix), from its printed bytes. */
export function specificationExample(format: 0 | 1): Uint8Array {
  const hex = readFileSync(
    new URL(`../../reference/smf_example_format${format}.hex`, import.meta.url),
    "utf8",
  );
  return Uint8Array.from(hex.trim().split(/\s+/), (byte) => Number.parseInt(byte, 16));
}

interface PlainNote {
  /** ticks of 1/480 beat */
  start: number;
  length: number;
  key: number;
  velocity: number;
}

/** A file with one track a list of notes, at 120 beats a minute, 480 ticks a beat. */
export function fileOfNotes(tracks: PlainNote[][], header: Partial<MidiData["header"]> = {}): Uint8Array {
  const written = tracks.map((notes, channel) => {
    const timed = notes.flatMap(({ start, length, key, velocity }) => [
      { tick: start, event: { type: "noteOn", channel, noteNumber: key, velocity } },
      { tick: start + length, event: { type: "noteOff", channel, noteNumber: key, velocity: 0 } },
    ]);
    timed.sort((a, b) => a.tick - b.tick || (a.event.type === "noteOff" ? -1 : 1));
    let tick = 0;
    const events = timed.map(({ tick: at, event }) => {
      const deltaTime = at - tick;
      tick = at;
      return { deltaTime, ...event } as MidiEvent;
    });
    return [...events, { deltaTime: 0, type: "endOfTrack", meta: true } as MidiEvent];
  });
  return Uint8Array.from(
    writeMidi({
      header: { format: 1, numTracks: written.length, ticksPerBeat: 480, ...header },
      tracks: written,
    }),
  );
}

/** A file around the raw bytes of one track. */
export function rawFile(track: number[], division = 480): Uint8Array {
  const length = [24, 16, 8, 0].map((shift) => (track.length >>> shift) & 0xff);
  return Uint8Array.from([
    ...[0x4d, 0x54, 0x68, 0x64, 0, 0, 0, 6, 0, 0, 0, 1, division >> 8, division & 0xff],
    ...[0x4d, 0x54, 0x72, 0x6b, ...length, ...track],
  ]);
}
