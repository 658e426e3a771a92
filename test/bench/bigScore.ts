/** Long scores of eight parts, made in code: the same seed gives the same notes. */
import { type MidiEvent, writeMidi } from "midi-file";

const PARTS = 8;
const TICKS_PER_BEAT = 480;
/** at the 120 beats a minute that hold without a tempo */
const TICKS_PER_SECOND = 960;
/** notes a second in each part */
const PACE = 4;

/** A linear congruential generator: Numerical Recipes, 2nd ed., section 7.1, “quick and dirty”. */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A melody about the part's own register, each note held for most of its step. */
function part(channel: number, notes: number, chance: () => number): MidiEvent[] {
  const step = TICKS_PER_SECOND / PACE;
  const events: MidiEvent[] = [];
  for (let index = 0; index < notes; index++) {
    const noteNumber = 36 + 6 * channel + Math.floor(12 * chance());
    const held = Math.round(step * (0.6 + 0.4 * chance()));
    const velocity = 64 + Math.floor(64 * chance());
    events.push({
      deltaTime: index === 0 ? 0 : step - lastHeld(events),
      type: "noteOn",
      channel,
      noteNumber,
      velocity,
    });
    events.push({ deltaTime: held, type: "noteOff", channel, noteNumber, velocity: 0 });
  }
  return [...events, { deltaTime: 0, type: "endOfTrack", meta: true }];
}

/** ticks that the last note was held */
function lastHeld(events: readonly MidiEvent[]): number {
  return events[events.length - 1].deltaTime;
}

/** The bytes of a file with this many notes, the parts at an equal pace. */
export function bigScore(notes: number): Uint8Array {
  const chance = seeded(notes);
  const tracks = Array.from({ length: PARTS }, (_, channel) => part(channel, notes / PARTS, chance));
  return Uint8Array.from(
    writeMidi({ header: { format: 1, numTracks: PARTS, ticksPerBeat: TICKS_PER_BEAT }, tracks }),
  );
}
