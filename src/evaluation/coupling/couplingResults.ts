/** Results of the coupling, in SI units. */

export interface CouplingResult {
  uniformCurrent: number;
  atResonance: number;
  /** of the whole primary circuit, leads included */
  circuit: number;
  mutualInductance: number;
}
