/** Harmed score files: each is read or refused with a sentence, and what is read plays within the limits. */
import { type MidiEvent, writeMidi } from "midi-file";
import { firstLanes } from "../../../src/calc/music/firstLanes";
import { midiScore } from "../../../src/calc/music/midiScore";
import { defaultArrangement } from "../../../src/design/arrangement";
import { pierHallLeft } from "../../../src/design/examples";
import { playCoil } from "../../../src/evaluation/score/playedCoil";
import type { TortureRow } from "../row";
import { harmed } from "../support/mutations";
import { newRandom, type Random } from "../support/random";
import { mayBeShown, notFinite, runTrials } from "../support/trials";

/** ms; a score of many hours in few bytes is the slowest */
const LONGEST = 60_000;

const meta = { deltaTime: 0, meta: true as const };

function track(channel: number, random: Random): MidiEvent[] {
  const notes = Array.from({ length: 24 }, (_, step): MidiEvent[] => {
    const noteNumber = 40 + random.whole(0, 50);
    return [
      {
        deltaTime: step % 3 === 0 ? 120 : 0,
        type: "noteOn",
        channel,
        noteNumber,
        velocity: random.whole(1, 127),
      },
      { deltaTime: 60, type: "pitchBend", channel, value: random.whole(-8192, 8191) },
      {
        deltaTime: 60,
        type: "controller",
        channel,
        controllerType: random.pick([7, 11, 64, 120, 121]),
        value: 90,
      },
      { deltaTime: 60, type: "noteOff", channel, noteNumber, velocity: 0 },
    ];
  });
  return [
    { ...meta, type: "trackName", text: "Flöte · 笛" },
    { ...meta, type: "setTempo", microsecondsPerBeat: 400_000 + 100_000 * channel },
    ...notes.flat(),
    { ...meta, type: "endOfTrack" },
  ];
}

function whole(random: Random): Uint8Array {
  const tracks = [0, 1, 9].map((channel) => track(channel, random));
  const header = { format: 1 as const, numTracks: tracks.length, ticksPerBeat: 480 };
  return Uint8Array.from(writeMidi({ header, tracks }));
}

/** What is wrong with how the coil plays what could be read. */
function wrongIn(bytes: Uint8Array): string {
  const reading = midiScore(bytes);
  if (!reading.ok) return mayBeShown(reading.message) ? "" : `refused with “${reading.message}”`;
  const { score } = reading;
  const strange = score.reports.find((report) => !mayBeShown(report));
  if (strange !== undefined) return `reported “${strange}”`;
  const arranged = { score, lanes: firstLanes(score, false), arrangement: defaultArrangement };
  const played = playCoil(arranged, "left", pierHallLeft);
  if (!played) return "was not played";
  const { starts, onTimes } = played.schedule.gate;
  const gap = pierHallLeft.interrupter.shortestGap * 1e9 - 1;
  if (starts.some((start, index) => index > 0 && start - starts[index - 1] - onTimes[index - 1] < gap))
    return "two pulses stand closer than the shortest gap";
  return notFinite({ score, played }) ?? "";
}

export const scoreFiles: TortureRow = {
  name: "score files harmed",
  full: 2000,
  short: 1,
  run: async (tries, seed) => {
    const random = newRandom(seed);
    return runTrials(tries, LONGEST, (index) => {
      const bytes = harmed(whole(random), random);
      return { tried: `file ${index} of ${bytes.length} bytes`, wrong: wrongIn(bytes) };
    });
  },
};
