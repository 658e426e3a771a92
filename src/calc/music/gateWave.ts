/**
 * The gates as a two-channel wave file, left and right: full level while a gate is on, otherwise silence.
 * A pulse begins at the next sample and ends at the last before its end, so that the file never holds
 * a longer pulse or a shorter gap than the schedule.
 *
 * Source: microsoft1991, "Waveform Audio File Format": RIFF WAVE, PCM, 8 bits unsigned.
 */
import type { GateToRead } from "./gate";
import type { Gates } from "./scheduleCsv";

const CHANNELS = 2;
const HEADER_BYTES = 44;
const SILENCE = 128;
const FULL = 255;
const PCM = 1;

function writeText(view: DataView, offset: number, text: string): void {
  for (let index = 0; index < text.length; index++) view.setUint8(offset + index, text.charCodeAt(index));
}

function writeHeader(view: DataView, sampleRate: number, dataBytes: number): void {
  writeText(view, 0, "RIFF");
  view.setUint32(4, HEADER_BYTES - 8 + dataBytes, true);
  writeText(view, 8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, PCM, true);
  view.setUint16(22, CHANNELS, true);
  view.setUint32(24, sampleRate, true);
  view.setUint32(28, sampleRate * CHANNELS, true);
  view.setUint16(32, CHANNELS, true);
  view.setUint16(34, 8, true);
  writeText(view, 36, "data");
  view.setUint32(40, dataBytes, true);
}

function writeGate(
  bytes: Uint8Array,
  gate: GateToRead | undefined,
  channel: number,
  sampleRate: number,
): void {
  if (!gate) return;
  const perNanosecond = sampleRate / 1e9;
  for (let index = 0; index < gate.starts.length; index++) {
    const first = Math.ceil(gate.starts[index] * perNanosecond);
    const end = Math.floor((gate.starts[index] + gate.onTimes[index]) * perNanosecond);
    for (let sample = first; sample < end; sample++) bytes[HEADER_BYTES + sample * CHANNELS + channel] = FULL;
  }
}

/**
 * The file's bytes.
 * @param duration s, at least to the end of the last pulse
 * @param sampleRate Hz; a sample is the resolution of every pulse
 */
export function gateWave(gates: Gates, duration: number, sampleRate: number): Uint8Array<ArrayBuffer> {
  const samples = Math.ceil(duration * sampleRate) + 1;
  const bytes = new Uint8Array(HEADER_BYTES + samples * CHANNELS).fill(SILENCE, HEADER_BYTES);
  writeHeader(new DataView(bytes.buffer), sampleRate, samples * CHANNELS);
  writeGate(bytes, gates.left, 0, sampleRate);
  writeGate(bytes, gates.right, 1, sampleRate);
  return bytes;
}
