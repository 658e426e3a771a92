/** The coil that a part of a score plays on, and the limits of a coil; plain data. */
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

/** The limits that a coil's gate never exceeds. */
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
  /** load of the bursts on the coil's parts; null if not computed */
  load: CoilLoad | null;
}

/** How loudness and pitch of notes determine on-times. */
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
