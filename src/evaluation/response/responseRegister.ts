import type { ResultEntry } from "../register/entry";
import { plain } from "../register/source";
import { COUPLED_NETWORK, POLE_SOURCE, poleEntry, TWO_CIRCUITS } from "./poleEntry";

const NETWORK = "Primary loop, first modes of the secondary and spark load, linear.";

function quality(id: string, label: string, symbol: string, state: string): ResultEntry {
  return {
    id: `response.${id}Quality`,
    label,
    symbol,
    dimension: "ratio",
    words: `How slowly the coupled system rings down at this pole, ${state}.`,
    formula: "Q = |Im s|/(−2·Re s)",
    inputs: [`response.${id}`, "primary.qualityFactor", "secondary.qualityFactor"],
    source: POLE_SOURCE,
    validity: NETWORK,
    accuracy: "As the losses: an upper bound.",
  };
}

/** Crossings of one network. */
function crossings(id: string, state: string): ResultEntry[] {
  const common = {
    inputs: ["response.lowerPole", "response.upperPole", "primary.qualityFactor"],
    source: [plain("ownModel", "bisection on the reactance of the network")],
    validity: NETWORK,
    accuracy: "1e-3 of the network in frequency; as the losses in resistance.",
  };
  return [
    {
      ...common,
      id: `response.${id}.*.frequency`,
      label: `Zero phase, ${state}`,
      symbol: "f₀",
      dimension: "frequency",
      words:
        "Frequency at which the bridge's voltage and current are in phase; feedback from the current can lock here.",
      formula: "Im Z(f₀) = 0",
    },
    {
      ...common,
      id: `response.${id}.*.resistance`,
      label: `Resistance at zero phase, ${state}`,
      symbol: "R₀",
      dimension: "resistance",
      words: "The pure resistance that the bridge sees there.",
      formula: "R₀ = Z(f₀)",
    },
  ];
}

export const RESPONSE_RESULTS: readonly ResultEntry[] = [
  poleEntry(
    "response.lowerPole",
    "Lower pole",
    "f₋",
    "Lower natural frequency of the coupled, lossy system, no spark.",
  ),
  poleEntry(
    "response.upperPole",
    "Upper pole",
    "f₊",
    "Upper natural frequency of the coupled, lossy system, no spark.",
  ),
  poleEntry(
    "response.loadedLowerPole",
    "Lower pole with the spark",
    "f₋ₛ",
    "Lower natural frequency of the coupled, lossy system, with the spark load.",
  ),
  poleEntry(
    "response.loadedUpperPole",
    "Upper pole with the spark",
    "f₊ₛ",
    "Upper natural frequency of the coupled, lossy system, with the spark load.",
  ),
  quality("lowerPole", "Q of the lower pole", "Q₋", "no spark"),
  quality("upperPole", "Q of the upper pole", "Q₊", "no spark"),
  quality("loadedLowerPole", "Q of the lower pole with the spark", "Q₋ₛ", "with the spark load"),
  quality("loadedUpperPole", "Q of the upper pole with the spark", "Q₊ₛ", "with the spark load"),
  {
    id: "response.beatFrequency",
    label: "Beat frequency",
    symbol: "f_b",
    dimension: "frequency",
    words: "How often the energy moves back and forth between primary and secondary, no spark.",
    formula: "f_b = f₊ − f₋",
    inputs: ["response.lowerPole", "response.upperPole"],
    source: [plain("circuitTheory", "superposition of two resonances")],
    validity: NETWORK,
    accuracy: "As the difference of the poles.",
  },
  {
    id: "response.firstMaximum",
    label: "First maximum of the top voltage",
    symbol: "t₁",
    dimension: "time",
    words:
      "Time after the drive begins, midway between the poles, until the top voltage's envelope first peaks.",
    formula: "t₁ = 1/f_b",
    inputs: ["response.beatFrequency"],
    source: [plain("circuitTheory", "superposition of two driven resonances")],
    validity: "Lossless, drive midway between the poles, no spark.",
    accuracy: "A few per cent while the Q of both poles is well above f/f_b.",
  },
  ...crossings("zeroPhase", "no spark"),
  ...crossings("loadedZeroPhase", "with the spark"),
];

/** The two response curves have the same entries. */
function curveResults(curve: "curve" | "loadedCurve", state: string): ResultEntry[] {
  const common = {
    inputs: [
      "primary.inductance",
      "tank.capacitance",
      "coupling.circuit",
      "secondary.qualityFactor",
      "primary.qualityFactor",
    ],
    source: [TWO_CIRCUITS],
    validity: COUPLED_NETWORK,
    accuracy: "1e-3 of the network.",
  };
  return [
    {
      ...common,
      id: `response.${curve}.*.frequency`,
      label: "Frequency",
      symbol: "f",
      dimension: "frequency",
      words: "Frequency of a sine source in place of the bridge.",
      formula: "f",
    },
    {
      ...common,
      id: `response.${curve}.*.topVoltagePerVolt`,
      label: `Top voltage per bridge volt, ${state}`,
      symbol: "V_top/V",
      dimension: "ratio",
      words: "Top voltage over the voltage of a sine source in place of the bridge.",
      formula: "V_top/V = Σ v_n / V",
    },
    {
      ...common,
      id: `response.${curve}.*.inputImpedance.magnitude`,
      label: `Input impedance, ${state}`,
      symbol: "|Z|",
      dimension: "resistance",
      words: "Impedance that the bridge sees.",
      formula: "Z = R + jωL + 1/jωC + Σ ω²M_n²/Z_n",
    },
    {
      ...common,
      id: `response.${curve}.*.inputImpedance.phase`,
      label: `Phase of the input impedance, ${state}`,
      symbol: "arg Z",
      dimension: "angle",
      words: "Phase of the impedance that the bridge sees; a bridge locks where it is zero.",
      formula: "arg Z",
    },
  ];
}

export const RESPONSE_CURVE_RESULTS: readonly ResultEntry[] = [
  ...curveResults("curve", "no spark"),
  ...curveResults("loadedCurve", "with the spark"),
];
