/** Which notes sound on a coil with a limited number of voices. */
import type { Change } from "./score";

/** A note as one coil is to play it. */
export interface CoilNote {
  /** index that the outcome is reported under */
  index: number;
  /** s */
  start: number;
  /** s */
  end: number;
  /** key with the lane's transposition */
  key: number;
  /** product of velocity and the lane's level, 0 … 1 */
  strength: number;
  /** semitones against time, of its channel */
  bends: readonly Change[];
  /** volume and expression against time, of its channel */
  levels: readonly Change[];
}

export interface VoiceAllocation {
  /** in order of start; notes that were displaced end early */
  notes: CoilNote[];
  /** indices of notes that had to end early */
  cut: number[];
  /** indices of notes that never sounded */
  dropped: number[];
}

/** The note to displace: the weakest, and of equally weak ones the oldest. */
function weakest(notes: readonly CoilNote[]): CoilNote {
  return notes.reduce((least, note) => (note.strength < least.strength ? note : least));
}

/**
 * Allocates voices. If more notes sound than there are voices, the weakest is displaced, and of equally
 * weak ones the oldest: a new note is heard, a melody struck harder than its accompaniment stays.
 * @param notes in any order
 * @param voices at least 1
 */
export function allotVoices(notes: readonly CoilNote[], voices: number): VoiceAllocation {
  const kept: CoilNote[] = [];
  const cut: number[] = [];
  const dropped: number[] = [];
  let sounding: CoilNote[] = [];
  for (const original of [...notes].sort((a, b) => a.start - b.start)) {
    const note = { ...original };
    sounding = sounding.filter((other) => other.end > note.start);
    const loser = sounding.length < voices ? null : weakest([...sounding, note]);
    if (loser === note) {
      dropped.push(note.index);
      continue;
    }
    if (loser) {
      loser.end = note.start;
      cut.push(loser.index);
      sounding = sounding.filter((other) => other !== loser);
    }
    sounding.push(note);
    kept.push(note);
  }
  return { notes: kept, cut, dropped };
}
