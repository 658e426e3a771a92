import type { GroundKey, WorkKey } from "../../calc/sources";

interface Cited {
  work: WorkKey;
  /** section, equation or page; empty for the work as a whole */
  place: string;
  /** what the place is cited for; may be empty */
  what: string;
}

interface Grounded {
  ground: GroundKey;
  what: string;
}

/** A source of a result or a model. */
export type Source = Cited | Grounded;

/** A place in a work. */
export function cite(work: WorkKey, place = "", what = ""): Source {
  return { work, place, what };
}

/** A ground for which no work is cited. */
export function plain(ground: GroundKey, what = ""): Source {
  return { ground, what };
}
