import { MAGNETIC_CONSTANT } from "../constants";

/**
 * H, inductance of two parallel leads as a two-wire line, current on their surfaces:
 * (μ₀·l/π)·arcosh(D/2ρ). Ends are left out: an estimate, low by a few per cent for short leads.
 *
 * @param length m, of the pair, one way
 * @param spacing m, centre to centre, > conductor diameter (else NaN)
 * @param conductorRadius m
 *
 * Source: Smythe, Static and Dynamic Electricity, 4.14 (capacitance of two cylinders) by LC = μ₀ε₀.
 */
export function leadInductance(length: number, spacing: number, conductorRadius: number): number {
  return ((MAGNETIC_CONSTANT * length) / Math.PI) * Math.acosh(spacing / (2 * conductorRadius));
}
