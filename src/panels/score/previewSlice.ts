/** A slice of a gate as samples. */
import type { GateToRead } from "../../calc/music/gate";
import { pulseLevel } from "./pulseSound";

/** Samples that a pulse lasts. */
const PULSE_SAMPLES = 3;

/** First index in a rising list whose entry is at least a value. */
function firstAtLeast(rising: ArrayLike<number>, value: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rising[middle] < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * The samples from a time on, with the end of a pulse that began just before.
 * @param from s
 * @param length samples
 * @param rate Hz
 */
export function sliceOf(
  gate: GateToRead | undefined,
  from: number,
  length: number,
  rate: number,
): Float32Array<ArrayBuffer> {
  const samples = new Float32Array(length);
  if (!gate) return samples;
  const first = Math.round(from * rate);
  const { starts, onTimes } = gate;
  for (
    let pulse = firstAtLeast(starts, ((first - PULSE_SAMPLES) / rate) * 1e9);
    pulse < starts.length;
    pulse++
  ) {
    const at = Math.floor((starts[pulse] / 1e9) * rate) - first;
    if (at >= length) break;
    const level = pulseLevel(onTimes[pulse]);
    for (let sample = Math.max(0, at); sample < Math.min(at + PULSE_SAMPLES, length); sample++)
      samples[sample] += level;
  }
  return samples;
}
