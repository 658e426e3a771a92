import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { midiScore } from "../../../src/calc/music/midiScore";
import type { Score } from "../../../src/calc/music/score";
import { runs } from "../../properties";
import { fileOfNotes, rawFile, specificationExample } from "./midiFiles";

function read(bytes: Uint8Array): Score {
  const reading = midiScore(bytes);
  if (!reading.ok) throw new Error(reading.message);
  return reading.score;
}

const END = [0x00, 0xff, 0x2f, 0x00];

describe("the example files of the Standard MIDI File 1.0 specification (RP-001)", () => {
  // read in the specification's own text: 96 ticks a beat, tempo 500 000 µs, notes in three channels
  const expected = [
    { channel: 1, key: 76, start: 192 / 192, end: 384 / 192, velocity: 32 / 127 },
    { channel: 2, key: 67, start: 96 / 192, end: 384 / 192, velocity: 64 / 127 },
    { channel: 3, key: 48, start: 0, end: 384 / 192, velocity: 96 / 127 },
    { channel: 3, key: 60, start: 0, end: 384 / 192, velocity: 96 / 127 },
  ];

  it.each([0, 1] as const)("format %i holds the four notes that the text describes", (format) => {
    const score = read(specificationExample(format));
    const notes = score.parts
      .flatMap(({ channel, notes: own }) => own.map((note) => ({ channel, ...note })))
      .sort((a, b) => a.channel - b.channel || a.key - b.key);
    expect(notes).toEqual(expected);
    expect(score.duration).toBe(2);
    expect(score.reports).toEqual([]);
  });
});

describe("reading a file", () => {
  it("says of notes that nothing holds that they do not sound, and lasts no time", () => {
    const struck = Array.from({ length: 5 }, (_, index) => [0x00, 0x90, 60 + index, 100]).flat();
    const score = read(rawFile([...struck, ...END]));
    expect(score.reports).toEqual(["Notes of zero length, which do not sound: 5."]);
    expect(score.duration).toBe(0);
  });

  it("agrees with the library that wrote it", () => {
    const score = read(
      fileOfNotes([
        [{ start: 480, length: 240, key: 69, velocity: 127 }],
        [{ start: 0, length: 960, key: 43, velocity: 64 }],
      ]),
    );
    expect(score.parts.map((part) => part.id)).toEqual(["1:1", "2:2"]);
    expect(score.parts[0].notes).toEqual([{ start: 0.5, end: 0.75, key: 69, velocity: 1 }]);
    expect(score.parts[1].notes[0].end).toBe(1);
  });

  it("follows running status and takes velocity 0 as key up", () => {
    const score = read(rawFile([0, 0x90, 60, 100, 0x83, 0x60, 60, 0, 0, 64, 100, 0x83, 0x60, 64, 0, ...END]));
    expect(score.parts[0].notes.map(({ key, start, end }) => [key, start, end])).toEqual([
      [60, 0, 0.5],
      [64, 0.5, 1],
    ]);
  });

  it("lets the sustain pedal hold notes, and a key struck again begin anew", () => {
    const score = read(
      rawFile([
        0,
        0xb0,
        64,
        127,
        0,
        0x90,
        60,
        100,
        0x83,
        0x60,
        60,
        0,
        0x83,
        0x60,
        60,
        90,
        0x83,
        0x60,
        60,
        0,
        0x83,
        0x60,
        0xb0,
        64,
        0,
        ...END,
      ]),
    );
    expect(score.parts[0].notes.map(({ start, end }) => [start, end])).toEqual([
      [0, 1],
      [1, 2],
    ]);
  });

  it("keeps bends, with their range, and levels", () => {
    const score = read(
      rawFile([
        0,
        0xb0,
        101,
        0,
        0,
        100,
        0,
        0,
        6,
        12,
        0,
        0xe0,
        0x7f,
        0x7f,
        0,
        0xb0,
        7,
        127,
        0,
        11,
        64,
        0,
        0x90,
        60,
        100,
        0x60,
        60,
        0,
        ...END,
      ]),
    );
    expect(score.parts[0].bends.at(-1)?.value).toBeCloseTo(12, 2);
    expect(score.parts[0].levels.at(-1)?.value).toBeCloseTo(64 / 127, 6);
  });

  it("counts time in frames with SMPTE division", () => {
    const division = ((0x100 - 25) << 8) | 40; // 25 frames of 40 ticks: a tick is a millisecond
    const score = read(rawFile([0, 0x90, 60, 100, 0x87, 0x68, 60, 0, ...END], division));
    expect(score.parts[0].notes[0].end).toBeCloseTo(1, 12);
  });

  it("follows changes of tempo", () => {
    const tempo = (microseconds: number) => [
      0xff,
      0x51,
      3,
      (microseconds >> 16) & 0xff,
      (microseconds >> 8) & 0xff,
      microseconds & 0xff,
    ];
    const score = read(
      rawFile([
        0,
        ...tempo(1_000_000),
        0,
        0x90,
        60,
        100,
        0x83,
        0x60,
        ...tempo(250_000),
        0x83,
        0x60,
        0x90,
        60,
        0,
        ...END,
      ]),
    );
    expect(score.parts[0].notes[0].end).toBeCloseTo(1.25, 12);
  });

  // meta events FF 03 (track name) and FF 04 (instrument name) of the Standard MIDI File 1.0
  it.each([
    ["its own name", [0, 0xff, 0x03, 1, 0x41], "A"],
    ["its instrument's, where it has none", [0, 0xff, 0x04, 1, 0x42], "B"],
    ["its own before its instrument's", [0, 0xff, 0x03, 1, 0x41, 0, 0xff, 0x04, 1, 0x42], "A"],
    ["its own after its instrument's", [0, 0xff, 0x04, 1, 0x42, 0, 0xff, 0x03, 1, 0x41], "A"],
    ["its number, where only its device is named", [0, 0xff, 0x09, 1, 0x42], "Track 1"],
  ])("calls a track by %s", (_, named, expected) => {
    expect(read(rawFile([...named, 0, 0x90, 60, 100, 0x60, 60, 0, ...END])).parts[0].name).toBe(expected);
  });

  it("marks the percussion channel", () => {
    expect(read(rawFile([0, 0x99, 36, 100, 0x60, 36, 0, ...END])).parts[0].percussion).toBe(true);
  });
});

describe("files that are not as they should be", () => {
  it("says what is no MIDI file, in one sentence", () => {
    expect(midiScore(new TextEncoder().encode('{ "format": "coilwright-design" }'))).toEqual({
      ok: false,
      message: "This is not a Standard MIDI File: it does not begin with a header chunk “MThd”.",
    });
    expect(midiScore(new Uint8Array())).toMatchObject({ ok: false });
  });

  it("reads a track whose name has megabytes, and gives the name's beginning", () => {
    const name = Array<number>(2_000_000).fill(0x61);
    const long = [0, 0xff, 0x03, 0xfa, 0x89, 0x00, ...name];
    const score = read(rawFile([...long, 0, 0x90, 60, 100, 0x60, 60, 0, ...END]));
    expect(score.parts[0].name).toBe(`${"a".repeat(119)}…`);
  });

  it("refuses notes that ask for more pulses than are made", () => {
    const chord = Array.from({ length: 16 }, (_, key) => ({
      start: 0,
      length: 480 * 1100,
      key: 112 + key,
      velocity: 9,
    }));
    expect(midiScore(fileOfNotes([chord]))).toMatchObject({
      ok: false,
      message: expect.stringMatching(/^The notes of this file need \d+ million pulses; at most 20 million/),
    });
  });

  it("refuses more than a million events, in however many tracks they are", () => {
    const events = 500_001; // of two bytes, delta time and programme: all zero, and the status runs on
    const length = 2 * events + 1 + END.length;
    const track = new Uint8Array(8 + length);
    track.set([0x4d, 0x54, 0x72, 0x6b, ...[24, 16, 8, 0].map((shift) => (length >>> shift) & 0xff), 0, 0xc0]);
    track.set(END, track.length - END.length);
    const header = rawFile([]).subarray(0, 14);
    const file = new Uint8Array(header.length + 2 * track.length);
    file.set(header);
    file.set(track, header.length);
    file.set(track, header.length + track.length);
    expect(midiScore(file)).toEqual({
      ok: false,
      message: "This file holds more than a million events. Open a shorter one.",
    });
  });

  it("refuses more parts than a show keeps lanes for", () => {
    const everyChannel = Array.from({ length: 16 }, (_, channel) => [
      ...[0, 0x90 | channel, 60, 100, 0x60, 0x80 | channel, 60, 0],
    ]).flat();
    const [header, track] = [rawFile([]).slice(0, 14), rawFile([...everyChannel, ...END]).slice(14)];
    const tracks = Array.from({ length: 257 }, () => [...track]).flat();
    expect(midiScore(Uint8Array.from([...header, ...tracks]))).toMatchObject({
      ok: false,
      message: "This file has 4112 parts; at most 4096 can be read. Open one with fewer.",
    });
  });

  it("leaves a tempo of zero out and says so", () => {
    const score = read(rawFile([0, 0xff, 0x51, 3, 0, 0, 0, 0, 0x90, 60, 100, 0x83, 0x60, 60, 0, ...END]));
    expect(score.parts[0].notes[0].end).toBe(0.5);
    expect(score.reports[0]).toContain("Tempos of zero");
  });

  it("refuses a file that lasts for days by a broken delta time", () => {
    const reading = midiScore(rawFile([0, 0x90, 60, 100, 0xff, 0xff, 0xff, 0x7f, 60, 0, ...END]));
    expect(reading).toMatchObject({ ok: false, message: expect.stringContaining("six hours") });
  });

  it("reads what is there of a file cut anywhere, and says that something is missing", () => {
    const whole = specificationExample(1);
    for (let length = 0; length < whole.length; length++) {
      const reading = midiScore(whole.subarray(0, length));
      if (reading.ok) expect(reading.score.reports.length, `cut at ${length}`).toBeGreaterThan(0);
      else expect(reading.message.length).toBeGreaterThan(10);
    }
  });

  it("unwraps a RIFF container and skips chunks of other kinds", () => {
    const file = specificationExample(0);
    const size = [file.length & 0xff, file.length >> 8, 0, 0];
    const text = (word: string) => [...word].map((letter) => letter.charCodeAt(0));
    const wrapped = Uint8Array.from([
      ...text("RIFF"),
      0,
      0,
      0,
      0,
      ...text("RMID"),
      ...text("data"),
      ...size,
      ...file,
    ]);
    expect(read(wrapped)).toEqual(read(file));
    const odd = Uint8Array.from([
      ...file.subarray(0, 14),
      ...text("XFIH"),
      0,
      0,
      0,
      2,
      1,
      2,
      ...file.subarray(14),
    ]);
    expect(read(odd).parts).toEqual(read(file).parts);
  });

  it("survives a thousand files with changed bytes, and never yields a note without a time", () => {
    const whole = [...specificationExample(1)];
    const change = fc.tuple(fc.nat(whole.length - 1), fc.nat(255));
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 12 }), (changes) => {
        const bytes = Uint8Array.from(whole);
        for (const [place, value] of changes) bytes[place] = value;
        const reading = midiScore(bytes);
        if (!reading.ok) return reading.message.endsWith(".");
        return reading.score.parts.every((part) =>
          part.notes.every(
            (note) => Number.isFinite(note.start) && note.end >= note.start && Number.isFinite(note.end),
          ),
        );
      }),
      runs(400, 1),
    );
  });

  it("reads a hundred thousand events", () => {
    const notes = Array.from({ length: 50_000 }, (_, index) => ({
      start: index * 10,
      length: 9,
      key: 40 + (index % 40),
      velocity: 90,
    }));
    expect(read(fileOfNotes([notes])).parts[0].notes).toHaveLength(50_000);
  });
});
