/**
 * From ticks to seconds under changing tempo.
 *
 * Source: standardMidiFiles, "Set Tempo" and the division word: without a tempo the file plays at 120 beats a
 * minute.
 */
import type { Change } from "./score";

export interface TempoMark {
  tick: number;
  microsecondsPerBeat: number;
}

export interface TempoMap {
  secondsAt: (tick: number) => number;
  /** beats per minute */
  tempos: Change[];
}

const DEFAULT_TEMPO = 500_000;
const NTSC_FRAMES = 30_000 / 1001;

/** Seconds a tick lasts in a file whose division counts frames; 29 stands for 29.97 drop frame. */
function smpteTick(division: number): number {
  const frames = 0x100 - (division >> 8);
  return 1 / ((frames === 29 ? NTSC_FRAMES : frames) * (division & 0xff));
}

function smpteMap(division: number): TempoMap {
  const tick = smpteTick(division);
  return { secondsAt: (ticks) => ticks * tick, tempos: [] };
}

/**
 * The map of a file.
 * @param division the header's division word
 * @param marks tempo changes in order of time, each with a tempo above zero
 */
export function tempoMap(division: number, marks: readonly TempoMark[]): TempoMap {
  if (division & 0x8000) return smpteMap(division);
  const segments = [{ tick: 0, time: 0, perTick: DEFAULT_TEMPO / 1e6 / division }];
  for (const mark of marks) {
    const last = segments[segments.length - 1];
    const time = last.time + (mark.tick - last.tick) * last.perTick;
    segments.push({ tick: mark.tick, time, perTick: mark.microsecondsPerBeat / 1e6 / division });
  }
  const secondsAt = (tick: number): number => {
    let low = 0;
    let high = segments.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (segments[middle].tick <= tick) low = middle;
      else high = middle - 1;
    }
    return segments[low].time + (tick - segments[low].tick) * segments[low].perTick;
  };
  const tempos = segments.map(({ time, perTick }) => ({ time, value: 60 / (perTick * division) }));
  return { secondsAt, tempos };
}
