/** A coil's gate while it is played live: the same limits as for a score, with pulses made as time passes. */
import { type Gate, GateBuilder } from "./gate";
import { PATIENCE_IN_PERIODS } from "./gateSchedule";
import type { CoilLimits } from "./lane";
import { allowedOnTime } from "./noteOnTime";
import { sharedOnTimes } from "./sharedOnTimes";

/** A tone that sounds until it is released. */
export interface LiveTone {
  id: string;
  /** Hz, above zero */
  rate: number;
  /** s, as requested, before the limits are applied */
  onTime: number;
}

interface Voice extends LiveTone {
  /** s, of its next pulse */
  next: number;
  /** s, the on-time that the other tones leave */
  shared: number;
}

const NANOSECONDS = 1e9;

/**
 * On-time over a window that ends at a time, as a part of the window.
 * @param time s
 * @param window s
 */
export function dutyBefore({ starts, onTimes }: Gate, time: number, window: number): number {
  const [from, to] = [(time - window) * NANOSECONDS, time * NANOSECONDS];
  let sum = 0;
  for (let i = starts.length - 1; i >= 0 && starts[i] + onTimes[i] > from; i--)
    sum += Math.max(0, Math.min(starts[i] + onTimes[i], to) - Math.max(starts[i], from));
  return sum / (window * NANOSECONDS);
}

export class LiveGate {
  readonly #limits: CoilLimits;
  #builder: GateBuilder;
  #voices: Voice[] = [];
  #handedOut = 0;
  #advancedTo = 0;

  constructor(limits: CoilLimits) {
    this.#limits = limits;
    this.#builder = new GateBuilder(limits);
  }

  /** Everything since the last long pause. */
  get gate(): Gate {
    return this.#builder.gate;
  }

  /** The tones that sound now. */
  get tones(): readonly LiveTone[] {
    return this.#voices;
  }

  /** Begins a tone, no earlier than the pulses already returned; if voices run out, the weakest is ended. */
  press(tone: LiveTone, time: number): void {
    const others = this.#voices.filter((voice) => voice.id !== tone.id);
    const next = Math.max(time, this.#advancedTo);
    const all = [...others, { ...tone, next, shared: tone.onTime }];
    const weakest = all.reduce((least, voice) => (voice.onTime < least.onTime ? voice : least));
    this.#sound(all.length > this.#limits.voices ? all.filter((voice) => voice !== weakest) : all);
  }

  release(id: string): void {
    this.#sound(this.#voices.filter((voice) => voice.id !== id));
  }

  #sound(voices: Voice[]): void {
    const shared = sharedOnTimes(this.#limits, voices);
    this.#voices = voices.map((voice, index) => ({ ...voice, shared: shared[index] }));
  }

  releaseAll(): void {
    this.#voices = [];
  }

  /** After a pause longer than gap and duty window, earlier pulses no longer count, except for their heat. */
  #forget(time: number): void {
    const { starts, onTimes } = this.#builder.gate;
    const last = starts.length - 1;
    const looksBack = Math.max(this.#limits.dutyWindow, this.#limits.shortestGap);
    if (last < 0 || (starts[last] + onTimes[last]) / NANOSECONDS + looksBack >= time) return;
    this.#builder = new GateBuilder(this.#limits, this.#builder);
    this.#handedOut = 0;
  }

  #offer(voice: Voice): void {
    const onTime = Math.min(voice.onTime, voice.shared, allowedOnTime(this.#limits, voice.rate));
    this.#builder.offer(voice.next, onTime, PATIENCE_IN_PERIODS / voice.rate);
    voice.next += 1 / voice.rate;
  }

  /**
   * Makes the pulses up to a time.
   * @param time s, no earlier than before
   * @returns those that are new
   */
  advance(time: number): Gate {
    this.#forget(this.#advancedTo);
    for (;;) {
      const voice = this.#voices.reduce<Voice | null>(
        (first, each) => (first && first.next <= each.next ? first : each),
        null,
      );
      if (!voice || voice.next >= time) break;
      this.#offer(voice);
    }
    this.#advancedTo = Math.max(this.#advancedTo, time);
    const { starts, onTimes } = this.gate;
    const from = this.#handedOut;
    this.#handedOut = starts.length;
    return { starts: starts.slice(from), onTimes: onTimes.slice(from) };
  }
}
