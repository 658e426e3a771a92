import type { ResultEntry } from "../register/entry";
import { cite, plain } from "../register/source";

const MUTUAL = [cite("maxwell1873", "art. 701"), cite("grover1946", "ch. 1", "Neumann's integral")];

export const COUPLING_RESULTS: readonly ResultEntry[] = [
  {
    id: "coupling.uniformCurrent",
    label: "Coupling, uniform current",
    symbol: "k₀",
    dimension: "ratio",
    words:
      "Mutual inductance to a secondary with the same current in every turn, as measured at low frequency.",
    formula: "k₀ = M/√(L_p·Lₛ)",
    inputs: ["coupling.mutualInductance", "primary.inductance", "secondary.inductance"],
    source: [plain("definition"), ...MUTUAL],
    validity: "Without leads.",
    accuracy: "1e-3 of the model.",
  },
  {
    id: "coupling.atResonance",
    label: "Coupling at the resonance",
    symbol: "k",
    dimension: "ratio",
    words: "The coupling that the primary sees in operation, with the current profile of the fundamental.",
    formula: "k = Σ Mᵢ Iᵢ/√(L_p·IᵀLI)",
    inputs: ["primary.inductance", "secondary.profile", "secondary.inductance"],
    source: [plain("definition", "energies with the modal current")],
    validity: "At the fundamental, without leads.",
    accuracy: "3e-3 of the model.",
  },
  {
    id: "coupling.circuit",
    label: "Coupling of the circuit",
    symbol: "k_c",
    dimension: "ratio",
    words: "The coupling at the resonance, reduced by the leads, whose inductance does not couple.",
    formula: "k_c = k·√(L_p/(L_p + L_leads))",
    inputs: ["coupling.atResonance", "primary.inductance", "primary.leadInductance"],
    source: [plain("circuitTheory", "coupled inductors")],
    validity: "At the fundamental.",
    accuracy: "3e-3 of the model.",
  },
  {
    id: "coupling.mutualInductance",
    label: "Mutual inductance, uniform current",
    symbol: "M",
    dimension: "inductance",
    words: "Line integral of r·A_φ of the secondary along the active arc of the primary.",
    formula: "M = ∮ A·dl",
    inputs: [
      "primary.tap",
      "primary.innerRadius",
      "primary.baseHeight",
      "secondary.baseHeight",
      "secondary.turns",
    ],
    source: MUTUAL,
    validity: "Axisymmetric secondary.",
    accuracy: "1e-3 of the model.",
  },
];
