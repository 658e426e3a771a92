/** How a gate schedule sounds: its pulses through a low-pass, left and right. */
import type { Gate } from "../../calc/music/gate";
import type { Gates } from "../../calc/music/scheduleCsv";
import { pulseLevel, softenedOutput } from "./pulseSound";

const SAMPLE_RATE = 16_000;

function write(samples: Float32Array, gate: Gate | undefined): void {
  gate?.starts.forEach((start, index) => {
    const at = Math.floor((start / 1e9) * SAMPLE_RATE);
    const height = pulseLevel(gate.onTimes[index]);
    for (let sample = at; sample < Math.min(at + 3, samples.length); sample++) samples[sample] += height;
  });
}

/** A player of gates; times in seconds. */
export class Preview {
  readonly #context = new AudioContext();
  readonly #volume = softenedOutput(this.#context);
  readonly #buffer: AudioBuffer;
  #source: AudioBufferSourceNode | null = null;
  #offset = 0;
  #startedAt = 0;

  constructor(gates: Gates, duration: number) {
    this.#buffer = this.#context.createBuffer(2, Math.ceil((duration + 0.1) * SAMPLE_RATE), SAMPLE_RATE);
    write(this.#buffer.getChannelData(0), gates.left);
    write(this.#buffer.getChannelData(1), gates.right);
  }

  /** s into the score */
  get position(): number {
    const since = this.#source ? this.#context.currentTime - this.#startedAt : 0;
    return Math.min(this.#buffer.duration, this.#offset + since);
  }

  set volume(value: number) {
    this.#volume.gain.value = value;
  }

  play(): void {
    this.pause();
    if (this.#offset >= this.#buffer.duration) this.#offset = 0;
    void this.#context.resume();
    this.#source = this.#context.createBufferSource();
    this.#source.buffer = this.#buffer;
    this.#source.connect(this.#volume);
    this.#startedAt = this.#context.currentTime;
    this.#source.start(0, this.#offset);
  }

  pause(): void {
    this.#offset = this.position;
    this.#source?.stop();
    this.#source?.disconnect();
    this.#source = null;
  }

  seek(time: number): void {
    const playing = this.#source !== null;
    this.pause();
    this.#offset = time;
    if (playing) this.play();
  }

  close(): void {
    this.pause();
    void this.#context.close();
  }
}
