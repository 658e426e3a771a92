/** Ten minutes of three voices for each coil of a pair. */
import { type MidiEvent, writeMidi } from "midi-file";
import { defaultArrangement } from "../../src/design/arrangement";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";
import type { ScoreRequest } from "../../src/workbench/background/scoreJob";

const DURATION = 600;
const NOTE = 0.25;
const VELOCITY = 102;
/** at the 120 beats a minute that hold without a tempo */
const TICKS_PER_BEAT = 480;
const TICKS = TICKS_PER_BEAT / 2;

function track(channel: number): MidiEvent[] {
  const notes = Array.from({ length: DURATION / NOTE }, (_, step): MidiEvent[] => {
    const noteNumber = 48 + 5 * channel + (step % 7);
    return [
      { deltaTime: 0, type: "noteOn", channel, noteNumber, velocity: VELOCITY },
      { deltaTime: TICKS, type: "noteOff", channel, noteNumber, velocity: 0 },
    ];
  });
  return [...notes.flat(), { deltaTime: 0, type: "endOfTrack", meta: true }];
}

const CHANNELS = [0, 1, 2];

export const tenMinutes: ScoreRequest = {
  bytesKey: "ten minutes",
  bytes: Uint8Array.from(
    writeMidi({
      header: { format: 1, numTracks: CHANNELS.length, ticksPerBeat: TICKS_PER_BEAT },
      tracks: CHANNELS.map(track),
    }),
  ),
  lanes: CHANNELS.map((index) => ({
    part: `${index + 1}:${index + 1}`,
    coil: "both" as const,
    transpose: 0,
    level: 1,
  })),
  arrangement: defaultArrangement,
  designs: { left: pierHallLeft, right: pierHallRight },
};
