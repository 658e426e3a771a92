import type { GroundKey, WorkKey } from "../../calc/sources";

interface Cited {
  work: WorkKey;
  /** section, equation or page; empty for the work as a whole */
  place: string;
  /** what stands there; empty where it is all that is shown */
  what: string;
}

interface Grounded {
  ground: GroundKey;
  what: string;
}

/** One of those things that a result or a model rests on. */
export type Source = Cited | Grounded;

/** A place in a work. */
export function cite(work: WorkKey, place = "", what = ""): Source {
  return { work, place, what };
}

/** A ground that no work is cited for. */
export function plain(ground: GroundKey, what = ""): Source {
  return { ground, what };
}
