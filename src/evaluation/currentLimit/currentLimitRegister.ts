/** The current transformers ahead of the over-current comparator. */
import { driveEntry, type Shared } from "../register/driveEntry";
import type { ResultEntry } from "../register/entry";
import { plain } from "../register/source";

const SENSE: Shared = {
  source: [plain("circuitTheory", "ampere-turns and u = N·A·dB/dt")],
  validity: "Without magnetising current; a sine at the running frequency.",
  accuracy: "2–5 %, as the turns and the burden.",
};

const CHAIN = ["drive.currentTransformer.turns", "drive.currentTransformer.burden"];

export const SENSE_RESULTS: readonly ResultEntry[] = [
  driveEntry(SENSE, {
    id: "transformerRatio",
    label: "Overall transformer ratio",
    symbol: "N",
    dimension: "count",
    words: "Product of the transformers' turns.",
    formula: "N = N₁·N₂",
    inputs: ["drive.currentTransformer.turns"],
  }),
  driveEntry(SENSE, {
    id: "limitVoltageAtComparator",
    label: "Comparator voltage at the limit",
    symbol: "U_lim",
    dimension: "voltage",
    words: "Peak voltage at the burden when the primary current reaches the over-current limit.",
    formula: "U = I_limit·R_b/N",
    inputs: [...CHAIN, "drive.overCurrentLimit"],
  }),
  driveEntry(SENSE, {
    id: "peakVoltageAtComparator",
    label: "Comparator voltage at the peak",
    symbol: "Û_b",
    dimension: "voltage",
    words: "Peak voltage at the burden in the design's burst.",
    formula: "U = î·R_b/N",
    inputs: [...CHAIN, "burst.peakPrimaryCurrent"],
  }),
  driveEntry(SENSE, {
    id: "burdenPower",
    label: "Power in the burden",
    symbol: "P_b",
    dimension: "power",
    words: "Mean over bursts and pauses.",
    formula: "P = (I/N)²·R_b",
    inputs: [...CHAIN, "interrupter.repetitionRate"],
  }),
  driveEntry(SENSE, {
    id: "coreFluxDensity",
    label: "Peak core flux density",
    symbol: "B̂",
    dimension: "fluxDensity",
    words: "Largest flux density of the cores at the larger of limit and peak current.",
    formula: "B̂ = U/(2πf·N·A)",
    inputs: [...CHAIN, "drive.currentTransformer.coreArea", "burst.runningFrequency"],
  }),
  driveEntry(SENSE, {
    id: "senseProposal.turns.*",
    label: "Turns, proposed",
    symbol: "N",
    dimension: "count",
    words:
      "Turns that bring the limit near 0.5 A in the burden: one transformer, or two equal ones in cascade.",
    formula: "N ≈ I_limit/0.5 A",
    inputs: ["drive.overCurrentLimit"],
  }),
  driveEntry(SENSE, {
    id: "senseProposal.burden",
    label: "Burden, proposed",
    symbol: "R_b",
    dimension: "resistance",
    words: "Resistor of the E24 series (IEC 60063) for the comparator's level at the limit.",
    formula: "R_b ≈ U·N/I_limit",
    inputs: ["drive.overCurrentLimit", "drive.currentTransformer.comparatorVoltage"],
  }),
  driveEntry(SENSE, {
    id: "senseProposal.comparatorVoltage",
    label: "Comparator level, proposed",
    symbol: "U_ref",
    dimension: "voltage",
    words: "Level to set with that resistor; near 2.5 V if none is given.",
    formula: "U = I_limit·R_b/N",
    inputs: ["drive.overCurrentLimit", "drive.currentTransformer.comparatorVoltage"],
  }),
];
