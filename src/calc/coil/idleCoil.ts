/** The effect of a burst of one coil on its idle neighbour, without its reaction on the burst. */

export interface IdleNeighbour {
  /** F of the fundamental */
  capacitance: number;
  qualityFactor: number;
  /** V, breakout voltage of its top load */
  breakoutVoltage: number;
  /** A at the foot of the winding for a volt at the top */
  baseCurrentPerVolt: number;
  /** V across its open primary for a volt at the top; null without a primary */
  primaryPerVolt: number | null;
  /** V across the primary at which its idle bridge's diodes conduct */
  bridgeVoltage: number;
}

/** Largest magnitudes in an idle coil while the other bursts. */
export interface InducedInIdle {
  /** V at the top */
  voltage: number;
  /** part of this coil's own breakout voltage */
  partOfBreakout: number;
  /** A at the base of the winding */
  baseCurrent: number;
  /** V across the open primary with its bank; null without a primary */
  primaryVoltage: number | null;
  /** whether the values are upper bounds, because the idle coil takes too much or its bridge's diodes conduct */
  bound: boolean;
}

/** Share of a burst's net energy in the idle coil above which its reaction can no longer be neglected. */
const MOST_TAKEN = 0.1;

/** Quality factor below which a coil does not ring at all. */
const LEAST_RINGING = 0.5;

/** Whether a coil of a quality factor rings. */
export function doesRing(qualityFactor: number): boolean {
  return qualityFactor > LEAST_RINGING;
}

/**
 * V across an open primary for a volt at the top of its own secondary, at the resonance: k·√(L_p/Lₛ).
 * @param coupling of primary and secondary at the resonance
 * @param primaryInductance H
 * @param secondaryInductance H, of the fundamental
 */
export function openPrimaryPerTopVolt(
  coupling: number,
  primaryInductance: number,
  secondaryInductance: number,
): number {
  return coupling * Math.sqrt(primaryInductance / secondaryInductance);
}

/**
 * The largest magnitudes of what is induced.
 * @param wave V at the idle coil's top (`inducedVoltage`)
 * @param netEnergy J that the burst takes from the bus
 */
export function inducedInIdle(
  idle: IdleNeighbour,
  wave: readonly number[],
  netEnergy: number,
): InducedInIdle {
  const voltage = wave.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  const primaryVoltage = idle.primaryPerVolt === null ? null : idle.primaryPerVolt * voltage;
  const taken = 0.5 * idle.capacitance * voltage * voltage;
  return {
    voltage,
    partOfBreakout: voltage / idle.breakoutVoltage,
    baseCurrent: voltage * idle.baseCurrentPerVolt,
    primaryVoltage,
    bound: taken > MOST_TAKEN * netEnergy || (primaryVoltage ?? 0) > idle.bridgeVoltage,
  };
}
