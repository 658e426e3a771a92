/** A score as it was read: parts with notes in seconds, independent of any coil. */

/** A value that applies from a time on. */
export interface Change {
  /** s */
  time: number;
  value: number;
}

export interface ScoreNote {
  /** s */
  start: number;
  /** s, when it ends: key up, or pedal up if the pedal holds it */
  end: number;
  /** MIDI key number, 60 is middle C */
  key: number;
  /** 0 … 1 */
  velocity: number;
}

/** The notes of one channel of one track. */
export interface ScorePart {
  /** `track:channel`, both counted from 1 */
  id: string;
  track: number;
  channel: number;
  name: string;
  /** MIDI channel 10 */
  percussion: boolean;
  notes: ScoreNote[];
  /** semitones by which the channel is bent */
  bends: Change[];
  /** product of volume and expression, 0 … 1 */
  levels: Change[];
}

/** More parts than any ensemble has; a score with more is refused. */
export const MOST_PARTS = 4096;

export interface Score {
  parts: ScorePart[];
  /** s */
  duration: number;
  /** beats per minute; empty with SMPTE division */
  tempos: Change[];
  /** what could not be read or was corrected, a sentence each */
  reports: string[];
}

/** The value that holds at a time; `before` holds until the first change. */
export function valueAtTime(changes: readonly Change[], time: number, before: number): number {
  let low = 0;
  let high = changes.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (changes[middle].time <= time) low = middle + 1;
    else high = middle;
  }
  return low === 0 ? before : changes[low - 1].value;
}
