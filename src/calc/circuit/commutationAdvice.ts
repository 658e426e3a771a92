/** Phase lead and dead time that make the current at turn-off smallest. */
import type { BurstDrive } from "../burst/burstDrive";
import type { BurstOptions } from "../burst/stepper";
import { simulateBurst } from "../burst/stepper";
import type { Network } from "./network";

/** s by which i + leadTime·di/dt passes zero before a sine current does: atan(ω·leadTime)/ω. */
export function zeroAdvance(leadTime: number, frequency: number): number {
  const omega = 2 * Math.PI * frequency;
  return Math.atan(omega * leadTime) / omega;
}

/** The lead time with a wanted advance, s; null if none reaches it, as for a quarter of a period or more. */
export function leadTimeFor(advance: number, frequency: number): number | null {
  const omega = 2 * Math.PI * frequency;
  return omega * advance < 0.5 * Math.PI ? Math.tan(omega * advance) / omega : null;
}

export interface CommutationAdvice {
  /** s, lead time with which a pair turns off exactly at the current's zero */
  leadAtZero: number | null;
  /** s, lead time with which the next pair turns on exactly at the zero, after the dead time */
  leadAcrossDeadTime: number | null;
  /** s from the present turn-off to the current's zero; negative if the pair turns off late */
  advance: number;
  /** s, longest dead time with which the next pair turns on before the zero */
  longestDeadTime: number;
  /** A at the present turn-off of a sine of the peak current; below 0 after the zero */
  turnOffCurrent: number;
}

/** Advice for a sinusoidal current, which the real one nearly is. */
export function commutationAdvice(
  { commutation }: Pick<BurstDrive, "commutation">,
  frequency: number,
  peakCurrent: number,
): CommutationAdvice {
  const { leadTime, delay, deadTime } = commutation;
  const advance = zeroAdvance(leadTime, frequency) - delay;
  return {
    leadAtZero: leadTimeFor(delay, frequency),
    leadAcrossDeadTime: leadTimeFor(delay + deadTime, frequency),
    advance,
    longestDeadTime: Math.max(advance, 0),
    turnOffCurrent: peakCurrent * Math.sin(2 * Math.PI * frequency * advance),
  };
}

/** A, RMS over the commutations of a burst, without its last turn-off, which the on-time determines. */
function turnOffRms(network: Network, drive: BurstDrive, options: BurstOptions): number {
  const turnOffs = simulateBurst(network, drive, options)?.turnOffs.slice(0, -1) ?? [];
  const sum = turnOffs.reduce((so, { current }) => so + current * current, 0);
  return turnOffs.length > 0 ? Math.sqrt(sum / turnOffs.length) : Number.POSITIVE_INFINITY;
}

const GOLDEN = 0.5 * (Math.sqrt(5) - 1);
const TRIALS = 14;

export interface QuietLead {
  /** s */
  leadTime: number;
  /** A, RMS over the burst's commutations */
  turnOffCurrent: number;
}

/**
 * The lead time with the smallest turn-off current over a whole burst, by golden section: about sixteen bursts.
 * @param leads s, the shortest and the longest lead that are tried
 */
export function quietLead(
  network: Network,
  drive: BurstDrive,
  leads: { shortest: number; longest: number },
  options: BurstOptions = {},
): QuietLead {
  const at = (leadTime: number) =>
    turnOffRms(network, { ...drive, commutation: { ...drive.commutation, leadTime } }, options);
  let [low, high] = [leads.shortest, leads.longest];
  let [a, b] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [currentA, currentB] = [at(a), at(b)];
  for (let trial = 0; trial < TRIALS; trial++) {
    if (currentA <= currentB) {
      [high, b, currentB] = [b, a, currentA];
      a = high - GOLDEN * (high - low);
      currentA = at(a);
    } else {
      [low, a, currentA] = [a, b, currentB];
      b = low + GOLDEN * (high - low);
      currentB = at(b);
    }
  }
  return currentA <= currentB
    ? { leadTime: a, turnOffCurrent: currentA }
    : { leadTime: b, turnOffCurrent: currentB };
}
