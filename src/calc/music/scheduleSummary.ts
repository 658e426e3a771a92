import type { CoilSchedule, NoteFate } from "./gateSchedule";

export interface ScheduleSummary {
  fates: Record<NoteFate, number>;
  /** number of notes by the reason of their change, most frequent first */
  reasons: { reason: string; notes: number }[];
  pulses: number;
}

/** How many notes were played, shortened and dropped, and why. */
export function scheduleSummary(schedule: CoilSchedule): ScheduleSummary {
  const fates: ScheduleSummary["fates"] = { played: 0, shortened: 0, dropped: 0 };
  const counts = new Map<string, number>();
  for (const note of schedule.notes) {
    fates[note.fate]++;
    for (const reason of note.reasons) counts.set(reason, (counts.get(reason) ?? 0) + 1);
  }
  const reasons = [...counts].map(([reason, notes]) => ({ reason, notes }));
  reasons.sort((a, b) => b.notes - a.notes);
  return { fates, reasons, pulses: schedule.gate.starts.length };
}
