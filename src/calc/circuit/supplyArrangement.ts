/** The properties of each supply arrangement, in one table. */
import type { Supply } from "../design-parts";

/** The mains cycle after the rectifier. */
export interface Rectification {
  /** pulses out of the rectifier in a cycle of the mains */
  pulsesPerCycle: number;
  /** the source within a pulse over the crest, at a part of the pulse from 0 to 1 */
  wave(part: number): number;
  /** RMS in a line of the mains over that in the loop that charges */
  lineShare: number;
  /** apparent power over the product of the mains' voltage and a line's current */
  phaseFactor: number;
}

export interface SupplyArrangement {
  /** V of the crest that charges, per volt of the mains, RMS and line to line for three phases */
  crest: number;
  /** parts of the reservoir in series, charged in turns */
  parts: 1 | 2;
  /** lines of the mains in the loop that charges */
  linesInLoop: 1 | 2;
  /** null if no mains are rectified here */
  rectification: Rectification | null;
}

const ONE_PHASE: Rectification = {
  pulsesPerCycle: 2,
  wave: (part) => Math.sin(part * Math.PI),
  lineShare: 1,
  phaseFactor: 1,
};

/** The envelope of six pulses, overlap of the phases left out; a line carries four pulses of the six. */
const THREE_PHASES: Rectification = {
  pulsesPerCycle: 6,
  wave: (part) => Math.cos(((part - 0.5) * Math.PI) / 3),
  lineShare: Math.sqrt(2 / 3),
  phaseFactor: Math.sqrt(3),
};

export const SUPPLY_ARRANGEMENTS: Record<Supply["arrangement"], SupplyArrangement> = {
  "bridge rectifier": { crest: Math.SQRT2, parts: 1, linesInLoop: 1, rectification: ONE_PHASE },
  doubler: { crest: Math.SQRT2, parts: 2, linesInLoop: 1, rectification: ONE_PHASE },
  "three-phase bridge": { crest: Math.SQRT2, parts: 1, linesInLoop: 2, rectification: THREE_PHASES },
  bench: { crest: 1, parts: 1, linesInLoop: 1, rectification: null },
};
