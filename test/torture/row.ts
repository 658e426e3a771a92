/** What every row of the torture has in common: it tries something many times and says what was lost. */
import type { Lab } from "./lab";

export interface RowResult {
  tried: number;
  /** tries that lost something, broke something or showed what must not be shown */
  lost: number;
  /** the worst figure met, with its unit, as in “worst delay 212 ms” */
  worst: string;
  /** one line for each of the first losses: what was tried, with which value, what came of it */
  losses: readonly string[];
}

export interface TortureRow {
  name: string;
  /** tries of the long form */
  full: number;
  /** tries of the short form, which `npm test` runs; 0 where a test of its own is the short form */
  short: number;
  /** @param seed the same seed tries the same things */
  run(tries: number, seed: number, lab: Lab): Promise<RowResult>;
}
