/** The sound of a gate that is played live; it drives no coil. */
import type { Gate } from "../../../calc/music/gate";
import type { LiveGate } from "../../../calc/music/liveGate";
import { lowPassOutput, PULSE_WIDTH, pulseLevel } from "../pulseSound";

/** s, how far ahead pulses are made: longer than a timer's delay, short enough to play by */
const AHEAD = 0.06;
const VOLUME = 0.3;

function endOf({ starts, onTimes }: Gate): number {
  const last = starts.length - 1;
  return (starts[last] + onTimes[last]) / 1e9;
}

export class LiveSound {
  readonly #context = new AudioContext();
  readonly #output = lowPassOutput(this.#context);

  constructor() {
    this.#output.gain.value = VOLUME;
    void this.#context.resume();
  }

  /** s, on the audio clock, which times the gates */
  get time(): number {
    return this.#context.currentTime;
  }

  /** Makes and plays the next pulses. */
  follow(live: LiveGate): void {
    const made = live.advance(this.time + AHEAD);
    if (made.starts.length > 0) this.#sound(made);
  }

  #sound(made: Gate): void {
    const { sampleRate } = this.#context;
    const from = made.starts[0] / 1e9;
    const width = Math.max(1, Math.round(PULSE_WIDTH * sampleRate));
    const length = Math.ceil((endOf(made) - from) * sampleRate) + width;
    const buffer = this.#context.createBuffer(1, length, sampleRate);
    const samples = buffer.getChannelData(0);
    made.starts.forEach((start, index) => {
      const at = Math.floor((start / 1e9 - from) * sampleRate);
      const level = pulseLevel(made.onTimes[index]);
      for (let sample = at; sample < Math.min(at + width, length); sample++) samples[sample] += level;
    });
    const source = this.#context.createBufferSource();
    source.buffer = buffer;
    source.connect(this.#output);
    source.start(from);
  }

  close(): void {
    void this.#context.close();
  }
}
