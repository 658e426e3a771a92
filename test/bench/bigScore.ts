/** Long scores of eight parts, made in code: the same length gives the same notes. */

const PARTS = 8;
const TICKS_PER_BEAT = 480;
/** notes a second in each part, at the 120 beats a minute that hold without a tempo */
const PACE = 4;
const STEP = (2 * TICKS_PER_BEAT) / PACE;

/** A linear congruential generator: Numerical Recipes, 2nd ed., section 7.1, “quick and dirty”. */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Below 16 384 a delta time has two bytes, seven bits each. */
function delta(ticks: number): number[] {
  return [0x80 | (ticks >> 7), ticks & 0x7f];
}

function bigEndian(value: number, bytes: number): number[] {
  return Array.from({ length: bytes }, (_, index) => (value >>> (8 * (bytes - 1 - index))) & 0xff);
}

function chunk(id: string, data: readonly number[]): number[] {
  return [...id].map((letter) => letter.charCodeAt(0)).concat(bigEndian(data.length, 4), data);
}

/** A melody about the part's own register, each note held for most of its step. */
function track(channel: number, notes: number, chance: () => number): number[] {
  const data: number[] = [];
  let rest = 0;
  for (let index = 0; index < notes; index++) {
    const key = 36 + 6 * channel + Math.floor(12 * chance());
    const held = Math.round(STEP * (0.6 + 0.4 * chance()));
    const velocity = 64 + Math.floor(64 * chance());
    data.push(...delta(rest), 0x90 | channel, key, velocity, ...delta(held), 0x80 | channel, key, 0);
    rest = STEP - held;
  }
  return chunk("MTrk", data.concat(0, 0xff, 0x2f, 0));
}

/** The bytes of a Standard MIDI File with this many notes, the parts at an equal pace. */
export function bigScore(notes: number): Uint8Array {
  const chance = seeded(notes);
  const tracks = Array.from({ length: PARTS }, (_, channel) => track(channel, notes / PARTS, chance));
  const header = chunk(
    "MThd",
    [1, PARTS, TICKS_PER_BEAT].flatMap((word) => bigEndian(word, 2)),
  );
  return Uint8Array.from(header.concat(...tracks));
}

/** s, a little more than to the end of the last note */
export function scoreLength(notes: number): number {
  return notes / PARTS / PACE - 1e-3;
}
