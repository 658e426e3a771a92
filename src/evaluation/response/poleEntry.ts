import type { ResultEntry } from "../register/entry";
import { cite, type Source } from "../register/source";

export const COUPLED_NETWORK =
  "Primary loop coupled to the first modes of the secondary, each normalised to the top voltage, with the spark load at the top.";
export const TWO_CIRCUITS = cite("terman1943", "sec. 3", "coupled circuits");
export const POLE_SOURCE = [TWO_CIRCUITS, cite("muller1956", "", "zeros of the network's determinant")];

/** The entry of a natural frequency of the coupled network. */
export function poleEntry(
  id: string,
  label: string,
  symbol: string,
  words: string,
  source: readonly Source[] = POLE_SOURCE,
): ResultEntry {
  return {
    id,
    label,
    symbol,
    dimension: "frequency",
    words,
    formula: "|Im s|/2π of det(s·M + K) = 0",
    inputs: ["primary.resonance", "secondary.resonance", "coupling.circuit"],
    source,
    validity: COUPLED_NETWORK,
    accuracy: "1e-3 of the network.",
  };
}
