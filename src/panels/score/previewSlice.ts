/** A stretch of a gate as samples. */
import type { GateToRead } from "../../calc/music/gate";
import { pulseLevel } from "./pulseSound";

/** Samples for which a pulse is held. */
const HELD = 3;

/** First index of a rising list whose entry is not below a value. */
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
 * The samples from a time on; a pulse that began shortly before still sounds into them.
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
  for (let pulse = firstAtLeast(starts, ((first - HELD) / rate) * 1e9); pulse < starts.length; pulse++) {
    const at = Math.floor((starts[pulse] / 1e9) * rate) - first;
    if (at >= length) break;
    const level = pulseLevel(onTimes[pulse]);
    for (let sample = Math.max(0, at); sample < Math.min(at + HELD, length); sample++)
      samples[sample] += level;
  }
  return samples;
}
