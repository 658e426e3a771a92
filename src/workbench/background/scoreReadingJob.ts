/** The job of the worker that reads scores: it returns what the page shows, not the thousands of notes. */
import { firstLanes } from "../../calc/music/firstLanes";
import type { Lane } from "../../calc/music/lane";
import { midiScore } from "../../calc/music/midiScore";
import { type PartSummary, partSummary } from "../../calc/music/partSummary";
import type { Score, ScorePart } from "../../calc/music/score";

export interface ScoreReadingRequest {
  /** of the file */
  bytes: Uint8Array;
  /** whether two coils play */
  pair: boolean;
}

/** A part without its notes. */
export type PartOutline = Pick<ScorePart, "id" | "track" | "channel" | "name"> & PartSummary;

/** A score without its notes. */
export interface ScoreOutline {
  parts: PartOutline[];
  /** s */
  duration: number;
  /** what could not be read or was corrected, a sentence each */
  reports: string[];
}

export type ScoreReading =
  | { ok: true; outline: ScoreOutline; firstLanes: Lane[] }
  | { ok: false; message: string };

function outlineOf({ parts, duration, reports }: Score): ScoreOutline {
  const outlined = parts.map((part) => {
    const { id, track, channel, name } = part;
    return { id, track, channel, name, ...partSummary(part) };
  });
  return { parts: outlined, duration, reports };
}

/** Reads as much of a file as can be read. */
export function scoreReadingJob({ bytes, pair }: ScoreReadingRequest): ScoreReading {
  const reading = midiScore(bytes);
  if (!reading.ok) return reading;
  return { ok: true, outline: outlineOf(reading.score), firstLanes: firstLanes(reading.score, pair) };
}
