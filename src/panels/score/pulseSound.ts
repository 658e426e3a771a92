/** The sound of a gate's pulses. */

/** Hz */
const CUTOFF = 3000;
/** s, on-time of a pulse at full level */
const FULL_PULSE = 300e-6;

/** s, length of a pulse in the sound */
export const PULSE_WIDTH = 3 / 16_000;

/** The level, 0 … 1, of a pulse of an on-time in ns. */
export function pulseLevel(onTime: number): number {
  return Math.min(1, onTime / 1e9 / FULL_PULSE);
}

/** A gain node connected to the output through a low-pass. */
export function lowPassOutput(context: AudioContext): GainNode {
  const volume = context.createGain();
  const filter = context.createBiquadFilter();
  filter.type = "lowpass";
  filter.frequency.value = CUTOFF;
  volume.connect(filter).connect(context.destination);
  return volume;
}
