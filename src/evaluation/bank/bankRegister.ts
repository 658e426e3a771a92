/** The stress on each unit of the bank by repeated bursts, and proposed banks. */
import type { ResultEntry } from "../register/entry";
import { plain } from "../register/source";

const COMMON = {
  source: [plain("circuitTheory", "equal units share voltage and current")],
  validity: "The design's burst, repeated at its rate.",
  accuracy: "As the burst; units assumed equal.",
};

const MARGIN = {
  ...COMMON,
  dimension: "ratio",
  accuracy: "As the stress; the data sheet's limit may fall with frequency and temperature.",
} as const;

export const TANK_STRESS_RESULTS: readonly ResultEntry[] = [
  {
    ...COMMON,
    id: "tank.unitPeakVoltage",
    label: "Peak voltage of a unit",
    symbol: "û_u",
    dimension: "voltage",
    words: "The bank's peak voltage shared by the units in series.",
    formula: "û_u = v̂_C/n_s",
    inputs: ["burst.peakBankVoltage", "tank.unitsInSeries"],
  },
  {
    ...COMMON,
    id: "tank.unitRmsVoltage",
    label: "RMS voltage of a unit",
    symbol: "U_u",
    dimension: "voltage",
    words: "RMS current of a unit times its reactance, over bursts and pauses.",
    formula: "U_u = I_u/(2πf_run·C_u)",
    inputs: ["tank.unitRmsCurrent", "burst.runningFrequency", "tank.unit.capacitance"],
  },
  {
    ...COMMON,
    id: "tank.unitPeakCurrent",
    label: "Peak current of a unit",
    symbol: "î_u",
    dimension: "current",
    words: "The primary's peak current shared by the strings.",
    formula: "î_u = î/n_p",
    inputs: ["burst.peakPrimaryCurrent", "tank.strings"],
  },
  {
    ...COMMON,
    id: "tank.unitRmsCurrent",
    label: "RMS current of a unit",
    symbol: "I_u",
    dimension: "current",
    words: "RMS over bursts and pauses, shared by the strings.",
    formula: "I_u = √(f_rep·∫ i² dt)/n_p",
    inputs: ["burst.waveform.primaryCurrent", "interrupter.repetitionRate", "tank.strings"],
  },
  {
    ...COMMON,
    id: "tank.loss",
    label: "Loss in the bank",
    symbol: "P_C",
    dimension: "power",
    words: "Heat in the dielectric of all units: the burst's loss times the repetition rate.",
    formula: "P_C = f_rep·W_C",
    inputs: ["burst.energy.bank", "interrupter.repetitionRate"],
  },
  {
    ...MARGIN,
    id: "tank.voltageMargin",
    label: "Voltage margin",
    symbol: "m_U",
    words: "Rated direct voltage over peak voltage of a unit.",
    formula: "m_U = U_rated/û_u",
    inputs: ["tank.unit.dcVoltage", "tank.unitPeakVoltage"],
  },
  {
    ...MARGIN,
    id: "tank.peakCurrentMargin",
    label: "Peak current margin",
    symbol: "m_î",
    words: "Rated peak current over peak current of a unit.",
    formula: "m_î = Î_rated/î_u",
    inputs: ["tank.unit.peakCurrent", "tank.unitPeakCurrent"],
  },
  {
    ...MARGIN,
    id: "tank.rmsCurrentMargin",
    label: "RMS current margin",
    symbol: "m_I",
    words: "Rated RMS current over RMS current of a unit.",
    formula: "m_I = I_rated/I_u",
    inputs: ["tank.unit.rmsCurrent", "tank.unitRmsCurrent"],
  },
];

type Own = Omit<ResultEntry, "inputs" | "source" | "validity" | "accuracy">;

function arrangement(own: Own): ResultEntry {
  return {
    ...own,
    id: `tank.arrangements.*.${own.id}`,
    inputs: ["tank.unit", "tank.capacitance", "burst.peakBankVoltage", "burst.peakPrimaryCurrent"],
    source: [plain("ownModel", "search over counts"), plain("commonPractice", "every margin at least 1.2")],
    validity: "Peak current and charge as in the present bank's burst; within 5 % of the wanted capacitance.",
    accuracy: "As the burst; retune with the bank that is built.",
  };
}

/** The stress of a unit in a proposal has the same names as that of the present bank. */
function proposedStress(own: Own): ResultEntry {
  return arrangement({ ...own, id: `stress.${own.id}` });
}

export const ARRANGEMENT_RESULTS: readonly ResultEntry[] = [
  arrangement({
    id: "unitsInSeries",
    label: "Units in series, proposed",
    symbol: "n_s",
    dimension: "count",
    words: "Units in a string of the proposed bank.",
    formula: "n_s",
  }),
  arrangement({
    id: "strings",
    label: "Strings, proposed",
    symbol: "n_p",
    dimension: "count",
    words: "Strings of the proposed bank.",
    formula: "n_p",
  }),
  arrangement({
    id: "units",
    label: "Units, proposed",
    symbol: "n",
    dimension: "count",
    words: "Units of the proposed bank.",
    formula: "n = n_s·n_p",
  }),
  arrangement({
    id: "capacitance",
    label: "Capacitance, proposed",
    symbol: "C",
    dimension: "capacitance",
    words: "Capacitance of the proposed bank.",
    formula: "C = C_u·n_p/n_s",
  }),
  arrangement({
    id: "deviation",
    label: "Deviation from wanted capacitance",
    symbol: "ΔC/C",
    dimension: "percent",
    words: "Relative difference from the wanted capacitance.",
    formula: "ΔC/C = C/C_wanted − 1",
  }),
  arrangement({
    id: "cost",
    label: "Price of the bank",
    symbol: "K",
    dimension: "ratio",
    words: "Number of units times the unit price, if given.",
    formula: "K = n·K_u",
  }),
  proposedStress({
    id: "peakVoltage",
    label: "Peak voltage of a unit, proposed",
    symbol: "û_u",
    dimension: "voltage",
    words: "As for the present bank.",
    formula: "û_u = v̂_C·(C_present/C)/n_s",
  }),
  proposedStress({
    id: "rmsVoltage",
    label: "RMS voltage of a unit, proposed",
    symbol: "U_u",
    dimension: "voltage",
    words: "As for the present bank.",
    formula: "U_u = I_u/(2πf_run·C_u)",
  }),
  proposedStress({
    id: "peakCurrent",
    label: "Peak current of a unit, proposed",
    symbol: "î_u",
    dimension: "current",
    words: "As for the present bank.",
    formula: "î_u = î/n_p",
  }),
  proposedStress({
    id: "rmsCurrent",
    label: "RMS current of a unit, proposed",
    symbol: "I_u",
    dimension: "current",
    words: "As for the present bank.",
    formula: "I_u = I/n_p",
  }),
  proposedStress({
    id: "loss",
    label: "Loss in a unit, proposed",
    symbol: "P_u",
    dimension: "power",
    words: "As for the present bank.",
    formula: "P_u = I_u²·tan δ/(2πf_run·C_u)",
  }),
  proposedStress({
    id: "voltageMargin",
    label: "Voltage margin, proposed",
    symbol: "m_U",
    dimension: "ratio",
    words: "Rated direct voltage over peak voltage of a unit.",
    formula: "m_U = U_rated/û_u",
  }),
  proposedStress({
    id: "peakCurrentMargin",
    label: "Peak current margin, proposed",
    symbol: "m_î",
    dimension: "ratio",
    words: "Rated peak current over peak current of a unit.",
    formula: "m_î = Î_rated/î_u",
  }),
  proposedStress({
    id: "rmsCurrentMargin",
    label: "RMS current margin, proposed",
    symbol: "m_I",
    dimension: "ratio",
    words: "Rated RMS current over RMS current of a unit.",
    formula: "m_I = I_rated/I_u",
  }),
];

/** Results of the bank's units and the primary alone. */
export const BANK_RESULTS: readonly ResultEntry[] = [
  {
    id: "tank.capacitance",
    label: "Bank capacitance",
    symbol: "C",
    dimension: "capacitance",
    words: "Strings in parallel of units in series.",
    formula: "C = C_unit·strings/series",
    inputs: ["tank.unit.capacitance", "tank.unitsInSeries", "tank.strings"],
    source: [plain("circuitTheory")],
    validity: "Equal units.",
    accuracy: "The units' tolerance, often 5 %.",
  },
  {
    id: "tank.peakVoltageRating",
    label: "Bank DC voltage rating",
    symbol: "V_C",
    dimension: "voltage",
    words:
      "Direct-voltage rating of a unit times the units in series; at these frequencies the data sheet allows less.",
    formula: "V = V_unit·series",
    inputs: ["tank.unit.dcVoltage", "tank.unitsInSeries"],
    source: [plain("circuitTheory")],
    validity: "Voltage shared equally.",
    accuracy: "Data sheet.",
  },
  {
    id: "tank.units",
    label: "Units in the bank",
    symbol: "n",
    dimension: "count",
    words: "Series times strings.",
    formula: "n = series·strings",
    inputs: ["tank.unitsInSeries", "tank.strings"],
    source: [plain("definition")],
    validity: "Always.",
    accuracy: "Exact.",
  },
  {
    id: "tank.characteristicImpedance",
    label: "Characteristic impedance of the primary",
    symbol: "Z₀",
    dimension: "resistance",
    words: "Volts on the bank per ampere in the primary.",
    formula: "Z₀ = √((L_p + L_leads)/C)",
    inputs: ["primary.inductance", "primary.leadInductance", "tank.capacitance"],
    source: [plain("circuitTheory")],
    validity: "Uncoupled.",
    accuracy: "Half that of L and C.",
  },
];
