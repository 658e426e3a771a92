import type { ScorePart } from "./score";

export interface PartSummary {
  /** MIDI keys, null if the part has no notes */
  range: { lowest: number; highest: number } | null;
  /** most notes that sound at once */
  polyphony: number;
}

function mostAtOnce(part: ScorePart): number {
  const turns = part.notes.flatMap((note) => [
    { time: note.start, step: 1 },
    { time: note.end, step: -1 },
  ]);
  turns.sort((a, b) => a.time - b.time || a.step - b.step);
  let sounding = 0;
  let most = 0;
  for (const { step } of turns) {
    sounding += step;
    most = Math.max(most, sounding);
  }
  return most;
}

function rangeOf(part: ScorePart): PartSummary["range"] {
  if (part.notes.length === 0) return null;
  let lowest = Number.POSITIVE_INFINITY;
  let highest = Number.NEGATIVE_INFINITY;
  for (const { key } of part.notes) {
    lowest = Math.min(lowest, key);
    highest = Math.max(highest, key);
  }
  return { lowest, highest };
}

/** Range and polyphony of a part. */
export function partSummary(part: ScorePart): PartSummary {
  return { range: rangeOf(part), polyphony: mostAtOnce(part) };
}
