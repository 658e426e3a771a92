/** The load of repeated bursts on the switches, and the timing that reduces it. */
import { driveEntry, type Shared } from "../register/driveEntry";
import type { ResultEntry } from "../register/entry";
import { cite, plain } from "../register/source";

const HEAT: Shared = {
  source: [cite("iec60747", "", "transient thermal impedance as a Foster network, exact for steps of power")],
  validity:
    "Conduction and turn-off from the burst's own half cycles; a device and its diode treated as one; turn-on and recovery left out.",
  accuracy: "20–30 %, as the data sheet's lines.",
};

const THERMAL = ["drive.switch.thermal", "drive.switchPower", "interrupter.repetitionRate"];

export const SWITCH_RESULTS: readonly ResultEntry[] = [
  driveEntry(HEAT, {
    id: "junctionTemperature",
    label: "Peak junction temperature",
    symbol: "T_j",
    dimension: "temperature",
    words: "Case temperature plus the rise at the worst moment of a burst in steady repetition.",
    formula: "T_j = T_c + max Σ ΔT_k(t)",
    inputs: [...THERMAL, "drive.switch.caseTemperature"],
  }),
  driveEntry(HEAT, {
    id: "meanJunctionTemperature",
    label: "Junction, mean",
    symbol: "T̄_j",
    dimension: "temperature",
    words: "Case temperature plus mean power times the total thermal resistance.",
    formula: "T̄_j = T_c + P·Σ R_k",
    inputs: [...THERMAL, "drive.switch.caseTemperature"],
  }),
  driveEntry(HEAT, {
    id: "junctionRise",
    label: "Junction rise within a burst",
    symbol: "ΔT_b",
    dimension: "temperatureRise",
    words: "Temperature rise from a burst's start to its worst moment.",
    formula: "ΔT_b = max Σ ΔT_k − Σ ΔT_k(0)",
    inputs: THERMAL,
  }),
  driveEntry(HEAT, {
    id: "junctionMargin",
    label: "Junction margin",
    symbol: "ΔT_m",
    dimension: "temperatureRise",
    words: "Margin to the junction's limit at the worst moment.",
    formula: "ΔT_m = T_limit − T_j",
    inputs: ["drive.junctionTemperature", "drive.switch.junctionLimit"],
  }),
  driveEntry(HEAT, {
    id: "switchPower",
    label: "Loss per device",
    symbol: "P_T",
    dimension: "power",
    words: "Conduction and turn-off of one device, times the repetition rate.",
    formula: "P_T = f_rep·(W_cond + W_off)",
    inputs: ["drive.conductionEnergy", "drive.turnOffEnergy", "interrupter.repetitionRate"],
  }),
  driveEntry(HEAT, {
    id: "conductionEnergy",
    label: "Conduction loss per device and burst",
    symbol: "W_cond",
    dimension: "energy",
    words: "On-state line over the half cycles that the device carries.",
    formula: "W = ∫ (U₀·i + r·i²) dt",
    inputs: [
      "drive.switch.onStateVoltage",
      "drive.switch.onStateResistance",
      "burst.waveform.primaryCurrent",
    ],
  }),
  driveEntry(HEAT, {
    id: "turnOffEnergy",
    label: "Turn-off loss per device and burst",
    symbol: "W_off",
    dimension: "energy",
    words: "The current at each turn-off times the data sheet's energy per ampere, in proportion to the bus.",
    formula: "W = Σ e_off·i·U/U_test",
    inputs: ["drive.switch.turnOffEnergyPerAmpere", "drive.turnOffCurrent", "drive.busVoltage"],
  }),
  driveEntry(HEAT, {
    id: "switchPeakCurrent",
    label: "Peak current of a device",
    symbol: "î_T",
    dimension: "current",
    words: "The primary's peak current shared by the devices in parallel.",
    formula: "î_T = î/n",
    inputs: ["burst.peakPrimaryCurrent", "drive.switch.parallelDevices"],
  }),
  driveEntry(HEAT, {
    id: "commutationCurrent",
    label: "Largest current at a commutation",
    symbol: "i_com",
    dimension: "current",
    words:
      "Largest current that one device switches off when the bridge commutates, without the burst's last turn-off.",
    formula: "i_com = max i(t_off)/n, last left out",
    inputs: ["drive.commutation", "burst.peakPrimaryCurrent"],
  }),
  driveEntry(HEAT, {
    id: "turnOffCurrent",
    label: "Largest turn-off current",
    symbol: "i_off",
    dimension: "current",
    words:
      "Largest current that one device switches off in the burst, including the last turn-off of the drive.",
    formula: "i_off = max i(t_off)/n",
    inputs: ["drive.commutation", "burst.peakPrimaryCurrent"],
  }),
  driveEntry(
    {
      source: [plain("dataSheet", "gate charge")],
      validity: "Gate as a charge at its swing.",
      accuracy: "10 %.",
    },
    {
      id: "gatePeakCurrent",
      label: "Peak gate current",
      symbol: "î_G",
      dimension: "current",
      words: "Gate swing over gate resistance, at the start of each change.",
      formula: "î_G = ΔU_G/R_G",
      inputs: ["drive.switch.gateVoltage", "drive.switch.gateResistance"],
    },
  ),
  driveEntry(
    {
      source: [plain("dataSheet", "gate charge")],
      validity: "Gate as a charge at its swing.",
      accuracy: "10 %.",
    },
    {
      id: "gatePower",
      label: "Gate power, all devices",
      symbol: "P_G",
      dimension: "power",
      words: "Charge times swing for each turn-on of each device.",
      formula: "P_G = f_rep·Σ Q_G·ΔU_G",
      inputs: ["drive.switch.gateCharge", "drive.switch.gateVoltage", "interrupter.repetitionRate"],
    },
  ),
];

const LEAD: Shared = {
  source: [plain("circuitTheory", "the comparator sees i + τ·di/dt, a phase of atan(ωτ) ahead")],
  validity: "Current assumed sinusoidal at the running frequency; feedback from the primary current.",
  accuracy: "10 ns; trim on the bench at low bus voltage.",
};

export const COMMUTATION_RESULTS: readonly ResultEntry[] = [
  driveEntry(LEAD, {
    id: "turnOffAdvance",
    label: "Turn-off before the current's zero",
    symbol: "t_adv",
    dimension: "time",
    words:
      "From a pair's turn-off to the current's zero; negative if it turns off late, with its diodes conducting.",
    formula: "t_adv = atan(ωτ)/ω − delay",
    inputs: ["drive.commutation.leadTime", "drive.commutation.delay", "burst.runningFrequency"],
  }),
  driveEntry(LEAD, {
    id: "leadAtZero",
    label: "Lead time for turn-off at zero current",
    symbol: "τ₀",
    dimension: "time",
    words: "With this lead time a pair turns off exactly at the current's zero.",
    formula: "τ₀ = tan(ω·delay)/ω",
    inputs: ["drive.commutation.delay", "burst.runningFrequency"],
  }),
  driveEntry(LEAD, {
    id: "leadAcrossDeadTime",
    label: "Lead time that covers the dead time",
    symbol: "τ₁",
    dimension: "time",
    words:
      "With this lead time the next pair turns on exactly at the current's zero; with less, the dead time is longer than the lead time allows.",
    formula: "τ₁ = tan(ω·(delay + dead time))/ω",
    inputs: ["drive.commutation.delay", "drive.commutation.deadTime", "burst.runningFrequency"],
  }),
  driveEntry(LEAD, {
    id: "longestDeadTime",
    label: "Longest dead time for this lead time",
    symbol: "t_d,max",
    dimension: "time",
    words: "From the present turn-off to the current's zero.",
    formula: "t = max(0, atan(ωτ)/ω − delay)",
    inputs: ["drive.commutation.leadTime", "drive.commutation.delay", "burst.runningFrequency"],
  }),
];
