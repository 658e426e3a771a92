/** Where a part of a score goes, and what a coil is allowed; plain data. */
import type { CoilLoad } from "./coilLoad";

type Destination = "left" | "right" | "both" | "none";

export interface Lane {
  /** id of the part */
  part: string;
  coil: Destination;
  /** semitones */
  transpose: number;
  /** 0 … 1 */
  level: number;
}

export type Coil = "left" | "right";

/** What a coil's gate never passes. */
export interface CoilLimits {
  /** s */
  longestOnTime: number;
  /** s, from the end of a pulse to the start of the next */
  shortestGap: number;
  /** on-time over any window of `dutyWindow` */
  dutyLimit: number;
  /** s */
  dutyWindow: number;
  /** how many notes may sound at once */
  voices: number;
  /** longest on-time that the design allows at a repetition rate: pairs of Hz and s, rates rising */
  onTimeByRate: { rate: number; onTime: number }[];
  /** what bursts ask of the coil's parts; null where they are not computed */
  load: CoilLoad | null;
}

/** How loud and high notes become on-times. */
export interface Expression {
  /** s, of a note of full velocity and level below the knee */
  onTime: number;
  /** Hz, above which the on-time falls with pitch */
  kneeRate: number;
  /** on-time falls as (knee/rate)^exponent: 0 not at all, 1 at constant duty */
  pitchExponent: number;
}

/** Whether a lane plays on a coil. */
export function playsOn(lane: Lane, coil: Coil): boolean {
  return lane.coil === coil || lane.coil === "both";
}
