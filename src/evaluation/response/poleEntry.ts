import type { ResultEntry } from "../register/entry";

export const COUPLED_NETWORK =
  "Primary loop coupled to the first modes of the secondary, each normalised to the top voltage, with the spark load at the top.";
export const POLE_SOURCE =
  "F. E. Terman, Radio Engineers' Handbook (1943), sec. 3 (coupled circuits); state-space eigenvalues";

/** The entry of a natural frequency of the coupled network. */
export function poleEntry(id: string, label: string, symbol: string, words: string): ResultEntry {
  return {
    id,
    label,
    symbol,
    dimension: "frequency",
    words,
    formula: "|Im s|/2π of det(s·M + K) = 0",
    inputs: ["primary.resonance", "secondary.resonance", "coupling.circuit"],
    source: POLE_SOURCE,
    validity: COUPLED_NETWORK,
    accuracy: "1e-3 of the network.",
  };
}
