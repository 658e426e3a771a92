/**
 * Frequency of a key in twelve-tone equal temperament, A4 (key 69) = 440 Hz.
 *
 * f = 440·2^((n−69)/12).
 * Source: iso16, the reference pitch.
 * @param key MIDI key number, fractions allowed (a bent note)
 * @returns Hz
 */
export function keyFrequency(key: number): number {
  return 440 * 2 ** ((key - 69) / 12);
}

const NAMES = ["C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"];

/** The name of a key with its octave, middle C (key 60) being C4. */
export function keyName(key: number): string {
  return `${NAMES[((key % 12) + 12) % 12]}${Math.floor(key / 12) - 1}`;
}
