/** How pulses of a gate are made audible. */

const SOFTENING = 3000;
/** s, of a pulse at full level */
const FULL_PULSE = 300e-6;

/** s, for which a pulse is held */
export const PULSE_WIDTH = 3 / 16_000;

/** The level, 0 … 1, of a pulse of an on-time in ns. */
export function pulseLevel(onTime: number): number {
  return Math.min(1, onTime / 1e9 / FULL_PULSE);
}

/** A volume whose sound goes out through a low-pass. */
export function softenedOutput(context: AudioContext): GainNode {
  const volume = context.createGain();
  const softener = context.createBiquadFilter();
  softener.type = "lowpass";
  softener.frequency.value = SOFTENING;
  volume.connect(softener).connect(context.destination);
  return volume;
}
