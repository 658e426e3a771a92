/**
 * The sound of a gate schedule: its pulses through a low-pass, left and right. It is rendered in slices just ahead of
 * the playback, so that a long score costs no more than a short one.
 */
import type { Gates } from "../../calc/music/scheduleCsv";
import { sliceOf } from "./previewSlice";
import { lowPassOutput } from "./pulseSound";

export const SAMPLE_RATE = 16_000;
/** s, length of a slice and how far ahead slices are rendered */
const SLICE = 5;
/** ms between two checks whether the next slice is due */
const CHECK_INTERVAL = 500;

/** A player of gates; times in seconds. */
export class Preview {
  readonly #context = new AudioContext();
  readonly #volume = lowPassOutput(this.#context);
  readonly #gates: Gates;
  readonly #duration: number;
  #sources: AudioBufferSourceNode[] = [];
  #timer: ReturnType<typeof setInterval> | null = null;
  #offset = 0;
  #startedAt = 0;
  /** s into the score, up to which slices are rendered */
  #rendered = 0;

  constructor(gates: Gates, duration: number) {
    this.#gates = gates;
    this.#duration = duration;
  }

  /** s into the score */
  get position(): number {
    const since = this.#timer === null ? 0 : this.#context.currentTime - this.#startedAt;
    return Math.min(this.#duration, this.#offset + since);
  }

  set volume(value: number) {
    this.#volume.gain.value = value;
  }

  #renderSlice(): void {
    const length = Math.min(SLICE, this.#duration - this.#rendered);
    const buffer = this.#context.createBuffer(2, Math.max(1, Math.ceil(length * SAMPLE_RATE)), SAMPLE_RATE);
    buffer.getChannelData(0).set(sliceOf(this.#gates.left, this.#rendered, buffer.length, SAMPLE_RATE));
    buffer.getChannelData(1).set(sliceOf(this.#gates.right, this.#rendered, buffer.length, SAMPLE_RATE));
    const source = this.#context.createBufferSource();
    source.buffer = buffer;
    source.connect(this.#volume);
    source.onended = () => {
      this.#sources = this.#sources.filter((each) => each !== source);
    };
    source.start(this.#startedAt + this.#rendered - this.#offset);
    this.#sources.push(source);
    this.#rendered += length;
  }

  #renderAhead(): void {
    while (this.#rendered < this.#duration && this.#rendered < this.position + SLICE) this.#renderSlice();
  }

  play(): void {
    this.pause();
    if (this.#offset >= this.#duration) this.#offset = 0;
    void this.#context.resume();
    this.#startedAt = this.#context.currentTime;
    this.#rendered = this.#offset;
    this.#timer = setInterval(() => this.#renderAhead(), CHECK_INTERVAL);
    this.#renderAhead();
  }

  pause(): void {
    this.#offset = this.position;
    if (this.#timer !== null) clearInterval(this.#timer);
    this.#timer = null;
    for (const source of this.#sources) {
      source.stop();
      source.disconnect();
    }
    this.#sources = [];
  }

  seek(time: number): void {
    const playing = this.#timer !== null;
    this.pause();
    this.#offset = time;
    if (playing) this.play();
  }

  close(): void {
    this.pause();
    void this.#context.close();
  }
}
