/**
 * Resonance of an inductance and a capacitance, undamped.
 * Source: thomson1853, ω = 1/√(LC).
 */

/**
 * Angular frequency, rad/s.
 * @param inductance H, above 0
 * @param capacitance F, above 0
 */
export function angularResonance(inductance: number, capacitance: number): number {
  return 1 / Math.sqrt(inductance * capacitance);
}

/** Frequency, Hz; arguments as above. */
export function resonance(inductance: number, capacitance: number): number {
  return angularResonance(inductance, capacitance) / (2 * Math.PI);
}

/**
 * Volts on the capacitance per ampere in the inductance at their resonance, Ω.
 * Source: circuit theory, Z₀ = √(L/C).
 */
export function characteristicImpedance(inductance: number, capacitance: number): number {
  return Math.sqrt(inductance / capacitance);
}

/** Quality factor of L, C and a resistance in series at their resonance: ωL/R. */
export function seriesQualityFactor(inductance: number, capacitance: number, resistance: number): number {
  return (angularResonance(inductance, capacitance) * inductance) / resistance;
}

/**
 * Resonance of a circuit, Hz, whose coupled neighbour is a coil shorted at radio frequency: its inductance
 * falls to L(1 − k²).
 * Source: terman1943, sec. 3 (coupled circuits).
 * @param open Hz, with the neighbour open
 * @param coupling coefficient between the two circuits
 * @returns null if the two are coupled completely: no inductance is left
 */
export function shortedResonance(open: number, coupling: number): number | null {
  return Math.abs(coupling) >= 1 ? null : open / Math.sqrt(1 - coupling * coupling);
}
