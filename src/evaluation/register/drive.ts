/** What the drive's burst, repeated at its rate, asks of supply, switches and current limit. */
import type { Dimension } from "../../units/dimension";
import type { ResultEntry } from "./entry";

type Own = Pick<ResultEntry, "label" | "symbol" | "words" | "formula" | "inputs"> & {
  id: string;
  dimension: Dimension;
};
type Shared = Pick<ResultEntry, "source" | "validity" | "accuracy">;

function drive(shared: Shared, own: Own): ResultEntry {
  return { ...shared, ...own, id: `drive.${own.id}` };
}

const SUPPLY: Shared = {
  source:
    "The circuit stepped through the mains' cycles until it repeats; O. H. Schade, Proc. IRE 31 (1943), 341, treats it by charts",
  validity: "Load of constant mean power; one loop of source resistance and inductance, diodes without drop.",
  accuracy: "0.5 % of the circuit; the source's resistance and inductance decide.",
};

const CHARGING: Shared = {
  source: "Step response of a series circuit; any textbook of circuits",
  validity: "Empty reservoir, steady voltage at the mains' crest.",
  accuracy: "From rectified mains charging takes longer; fuses and contactor are not in it.",
};

const LOAD = ["drive.supply", "drive.reservoirCapacitance", "drive.averagePower"];

const SUPPLY_RESULTS: readonly ResultEntry[] = [
  drive(SUPPLY, {
    id: "busVoltage",
    label: "Bus voltage, no load",
    symbol: "U_bus",
    dimension: "voltage",
    words: "Bus at no load: the mains' crest, twice it from a doubler, the bench supply's own voltage.",
    formula: "U_bus = √2·U_mains (bridge), 2√2·U_mains (doubler)",
    inputs: ["drive.supply.arrangement", "drive.supply.mainsVoltage"],
  }),
  drive(SUPPLY, {
    id: "averagePower",
    label: "Mean power from the reservoir",
    symbol: "P",
    dimension: "power",
    words: "Net energy of a burst and its turn-offs, times the repetition rate.",
    formula: "P = f_rep·(W_in − W_back + W_off)",
    inputs: [
      "burst.energy.supplied",
      "burst.energy.returned",
      "burst.energy.turnOff",
      "interrupter.repetitionRate",
    ],
  }),
  drive(SUPPLY, {
    id: "duty",
    label: "Duty",
    symbol: "D",
    dimension: "percent",
    words: "Part of the time that is on-time.",
    formula: "D = t_on·f_rep",
    inputs: ["interrupter.onTime", "interrupter.repetitionRate"],
  }),
  drive(SUPPLY, {
    id: "meanBusVoltage",
    label: "Bus voltage under load, mean",
    symbol: "U_m",
    dimension: "voltage",
    words: "Mean of the bus under the mean power.",
    formula: "U_m = (1/T)·∫ u dt",
    inputs: LOAD,
  }),
  drive(SUPPLY, {
    id: "lowestBusVoltage",
    label: "Bus voltage under load, least",
    symbol: "U_min",
    dimension: "voltage",
    words: "Least of the bus under the mean power, between the mains' crests.",
    formula: "U_min = min u",
    inputs: LOAD,
  }),
  drive(SUPPLY, {
    id: "busRipple",
    label: "Ripple of the bus",
    symbol: "ΔU_r",
    dimension: "voltage",
    words: "Peak to peak, of the mains' rhythm; a burst's own sag comes on top.",
    formula: "ΔU_r = max u − min u",
    inputs: LOAD,
  }),
  drive(SUPPLY, {
    id: "chargingCurrent",
    label: "Peak charging current",
    symbol: "î_ch",
    dimension: "current",
    words: "Largest of the rectifier's pulses.",
    formula: "L·di/dt + R·i = u_mains − u",
    inputs: LOAD,
  }),
  drive(SUPPLY, {
    id: "mainsCurrent",
    label: "Mains current, RMS",
    symbol: "I_mains",
    dimension: "current",
    words: "RMS in a line of the mains; its pulses make it larger than power over voltage.",
    formula: "I = √(⟨i²⟩)",
    inputs: LOAD,
  }),
  drive(SUPPLY, {
    id: "apparentPower",
    label: "Apparent power",
    symbol: "S",
    dimension: "apparentPower",
    words: "Mains voltage times RMS current, √3 of it for three phases.",
    formula: "S = U·I, √3·U·I",
    inputs: ["drive.mainsCurrent", "drive.supply.mainsVoltage"],
  }),
  drive(SUPPLY, {
    id: "powerFactor",
    label: "Power factor",
    symbol: "λ",
    dimension: "ratio",
    words: "Power from the mains over apparent power.",
    formula: "λ = P_mains/S",
    inputs: ["drive.apparentPower", "drive.averagePower"],
  }),
  drive(
    {
      ...SUPPLY,
      source: "IEC 60269-1, preferred ratings (figures from memory); factor 1.25: common practice, no source",
      accuracy: "A hint: the licensed person decides.",
    },
    {
      id: "fuseHint",
      label: "Fuse, a hint",
      symbol: "I_F",
      dimension: "current",
      words: "Next preferred rating above 1.25 times the mains current. The licensed person decides.",
      formula: "I_F ≥ 1.25·I_mains",
      inputs: ["drive.mainsCurrent"],
    },
  ),
  drive(SUPPLY, {
    id: "reservoirRmsCurrent",
    label: "Reservoir current, RMS",
    symbol: "I_R",
    dimension: "current",
    words: "The rectifier's pulses and the bursts, each beyond the mean, added as squares.",
    formula: "I_R = √(I_rect² − I₀² + f_rep·∫ i² dt − I₀²)",
    inputs: [...LOAD, "interrupter.repetitionRate"],
  }),
  drive(CHARGING, {
    id: "reservoirEnergy",
    label: "Energy in the reservoir",
    symbol: "W_R",
    dimension: "energy",
    words: "What the charged reservoir holds, and what a fault or a hand gets.",
    formula: "W_R = ½·C·U_bus²",
    inputs: ["drive.reservoirCapacitance", "drive.busVoltage"],
  }),
  drive(CHARGING, {
    id: "inrushCurrent",
    label: "Inrush without pre-charge",
    symbol: "î_in",
    dimension: "current",
    words: "First peak into the empty reservoir through the source alone.",
    formula: "î = U/(ωL)·e^(−αt)·sin ωt at tan ωt = ω/α",
    inputs: [
      "drive.busVoltage",
      "drive.supply.sourceResistance",
      "drive.supply.sourceInductance",
      "drive.reservoirCapacitance",
    ],
  }),
  drive(CHARGING, {
    id: "prechargeCurrent",
    label: "Inrush with pre-charge",
    symbol: "î_pre",
    dimension: "current",
    words: "Largest current through the pre-charge resistor.",
    formula: "î = U/R",
    inputs: ["drive.busVoltage", "drive.supply.prechargeResistance"],
  }),
  drive(CHARGING, {
    id: "prechargeTime",
    label: "Pre-charge to 95 %",
    symbol: "t_pre",
    dimension: "time",
    words: "Time to 95 % of the bus through the pre-charge resistor.",
    formula: "t = RC·ln 20",
    inputs: ["drive.supply.prechargeResistance", "drive.reservoirCapacitance"],
  }),
  drive(CHARGING, {
    id: "prechargeEnergy",
    label: "Energy in the pre-charge resistor",
    symbol: "W_pre",
    dimension: "energy",
    words: "As much as the reservoir then stores.",
    formula: "W = ½·C·U²",
    inputs: ["drive.reservoirCapacitance", "drive.busVoltage"],
  }),
  drive(
    {
      ...CHARGING,
      source: "t = RC·ln(U/60 V); 60 V: IEC 61010-1 (2010), 6.3.1",
      validity: "Mains off, resistor intact: measure before touching.",
    },
    {
      id: "dischargeTime",
      label: "Discharge to 60 V",
      symbol: "t_60",
      dimension: "time",
      words: "Time until the discharge resistor has brought the bus to 60 V. Measure before touching.",
      formula: "t = RC·ln(U_bus/60 V)",
      inputs: ["drive.supply.dischargeResistance", "drive.reservoirCapacitance", "drive.busVoltage"],
    },
  ),
  drive(CHARGING, {
    id: "dischargePower",
    label: "Power in the discharge resistor",
    symbol: "P_dis",
    dimension: "power",
    words: "All the time while the bus is up.",
    formula: "P = U_bus²/R",
    inputs: ["drive.supply.dischargeResistance", "drive.busVoltage"],
  }),
];

const HEAT: Shared = {
  source: "Foster network, exact for steps of power: IEC 60747-9, transient thermal impedance",
  validity:
    "Conduction and turn-off from the burst's own half cycles; a device and its diode taken as one; turn-on and recovery left out.",
  accuracy: "20–30 %, as the data sheet's lines.",
};

const THERMAL = ["drive.switch.thermal", "drive.switchPower", "interrupter.repetitionRate"];

const SWITCH_RESULTS: readonly ResultEntry[] = [
  drive(HEAT, {
    id: "junctionTemperature",
    label: "Junction, at the worst moment",
    symbol: "T_j",
    dimension: "temperature",
    words: "Case temperature and the rise at the worst moment of a burst among many.",
    formula: "T_j = T_c + max Σ ΔT_k(t)",
    inputs: [...THERMAL, "drive.switch.caseTemperature"],
  }),
  drive(HEAT, {
    id: "meanJunctionTemperature",
    label: "Junction, mean",
    symbol: "T̄_j",
    dimension: "temperature",
    words: "Case temperature and mean power times the whole thermal resistance.",
    formula: "T̄_j = T_c + P·Σ R_k",
    inputs: [...THERMAL, "drive.switch.caseTemperature"],
  }),
  drive(HEAT, {
    id: "junctionRise",
    label: "Junction rise within a burst",
    symbol: "ΔT_b",
    dimension: "temperatureRise",
    words: "From a burst's start to its worst moment.",
    formula: "ΔT_b = max Σ ΔT_k − Σ ΔT_k(0)",
    inputs: THERMAL,
  }),
  drive(HEAT, {
    id: "junctionMargin",
    label: "Junction below its limit",
    symbol: "ΔT_m",
    dimension: "temperatureRise",
    words: "What is left below the junction's limit at the worst moment.",
    formula: "ΔT_m = T_limit − T_j",
    inputs: ["drive.junctionTemperature", "drive.switch.junctionLimit"],
  }),
  drive(HEAT, {
    id: "switchPower",
    label: "Power in a device",
    symbol: "P_T",
    dimension: "power",
    words: "Conduction and turn-off of one device, times the repetition rate.",
    formula: "P_T = f_rep·(W_cond + W_off)",
    inputs: ["drive.conductionEnergy", "drive.turnOffEnergy", "interrupter.repetitionRate"],
  }),
  drive(HEAT, {
    id: "conductionEnergy",
    label: "Conduction of a device in a burst",
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
  drive(HEAT, {
    id: "turnOffEnergy",
    label: "Turn-off of a device in a burst",
    symbol: "W_off",
    dimension: "energy",
    words: "The current at each turn-off times the data sheet's energy per ampere, in proportion to the bus.",
    formula: "W = Σ e_off·i·U/U_test",
    inputs: ["drive.switch.turnOffEnergyPerAmpere", "drive.turnOffCurrent", "drive.busVoltage"],
  }),
  drive(HEAT, {
    id: "switchPeakCurrent",
    label: "Peak current of a device",
    symbol: "î_T",
    dimension: "current",
    words: "The primary's peak current shared by the devices in parallel.",
    formula: "î_T = î/n",
    inputs: ["burst.peakPrimaryCurrent", "drive.switch.parallelDevices"],
  }),
  drive(HEAT, {
    id: "turnOffCurrent",
    label: "Largest turn-off current",
    symbol: "i_off",
    dimension: "current",
    words:
      "Largest current that one device switches off in the burst, the last turn-off of the drive included.",
    formula: "i_off = max i(t_off)/n",
    inputs: ["drive.commutation", "burst.peakPrimaryCurrent"],
  }),
  drive(
    {
      source: "Gate charge, data-sheet practice of every maker",
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
  drive(
    {
      source: "Gate charge, data-sheet practice of every maker",
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
  source: "The comparator sees i + τ·di/dt: a phase of atan(ωτ) ahead",
  validity: "The current taken as a sine at the running frequency; feedback from the primary current.",
  accuracy: "10 ns; trim on the bench at low bus voltage.",
};

const COMMUTATION_RESULTS: readonly ResultEntry[] = [
  drive(LEAD, {
    id: "leadAtZero",
    label: "Lead time for turn-off at zero current",
    symbol: "τ₀",
    dimension: "time",
    words: "With this lead a pair goes off just at the current's zero.",
    formula: "τ₀ = tan(ω·delay)/ω",
    inputs: ["drive.commutation.delay", "burst.runningFrequency"],
  }),
  drive(LEAD, {
    id: "leadAcrossDeadTime",
    label: "Lead time that spans the dead time",
    symbol: "τ₁",
    dimension: "time",
    words:
      "With this lead the next pair comes on just at the current's zero; less makes the dead time longer than the lead allows.",
    formula: "τ₁ = tan(ω·(delay + dead time))/ω",
    inputs: ["drive.commutation.delay", "drive.commutation.deadTime", "burst.runningFrequency"],
  }),
  drive(LEAD, {
    id: "longestDeadTime",
    label: "Longest dead time for this lead",
    symbol: "t_d,max",
    dimension: "time",
    words: "From the present turn-off to the current's zero.",
    formula: "t = atan(ωτ)/ω − delay",
    inputs: ["drive.commutation.leadTime", "drive.commutation.delay", "burst.runningFrequency"],
  }),
];

const SENSE: Shared = {
  source: "Ampere-turns and u = N·A·dB/dt; any textbook of transformers",
  validity: "Magnetising current left out; a sine at the running frequency.",
  accuracy: "2–5 %, as the turns and the burden.",
};

const CHAIN = ["drive.currentTransformer.turns", "drive.currentTransformer.burden"];

const SENSE_RESULTS: readonly ResultEntry[] = [
  drive(SENSE, {
    id: "transformerRatio",
    label: "Ratio of the chain",
    symbol: "N",
    dimension: "count",
    words: "Product of the transformers' turns.",
    formula: "N = N₁·N₂",
    inputs: ["drive.currentTransformer.turns"],
  }),
  drive(SENSE, {
    id: "limitVoltageAtComparator",
    label: "Volts at the comparator at the limit",
    symbol: "U_lim",
    dimension: "voltage",
    words: "Peak voltage at the burden when the primary current reaches the over-current limit.",
    formula: "U = I_limit·R_b/N",
    inputs: [...CHAIN, "drive.overCurrentLimit"],
  }),
  drive(SENSE, {
    id: "peakVoltageAtComparator",
    label: "Volts at the comparator at the peak",
    symbol: "Û_b",
    dimension: "voltage",
    words: "Peak voltage at the burden in the design's burst.",
    formula: "U = î·R_b/N",
    inputs: [...CHAIN, "burst.peakPrimaryCurrent"],
  }),
  drive(SENSE, {
    id: "burdenPower",
    label: "Power in the burden",
    symbol: "P_b",
    dimension: "power",
    words: "Mean over bursts and pauses.",
    formula: "P = (I/N)²·R_b",
    inputs: [...CHAIN, "interrupter.repetitionRate"],
  }),
  drive(SENSE, {
    id: "coreFluxDensity",
    label: "Flux density, hardest worked core",
    symbol: "B̂",
    dimension: "fluxDensity",
    words: "Largest flux density of the cores at the larger of limit and peak current.",
    formula: "B̂ = U/(2πf·N·A)",
    inputs: [...CHAIN, "drive.currentTransformer.coreArea", "burst.runningFrequency"],
  }),
  drive(SENSE, {
    id: "senseProposal.turns.*",
    label: "Turns, proposed",
    symbol: "N",
    dimension: "count",
    words: "Turns that bring the limit near 0.5 A in the burden: one transformer, or two alike in cascade.",
    formula: "N ≈ I_limit/0.5 A",
    inputs: ["drive.overCurrentLimit"],
  }),
  drive(SENSE, {
    id: "senseProposal.burden",
    label: "Burden, proposed",
    symbol: "R_b",
    dimension: "resistance",
    words: "Resistor of the E24 series (IEC 60063) for the comparator's level at the limit.",
    formula: "R_b ≈ U·N/I_limit",
    inputs: ["drive.overCurrentLimit", "drive.currentTransformer.comparatorVoltage"],
  }),
  drive(SENSE, {
    id: "senseProposal.comparatorVoltage",
    label: "Comparator level, proposed",
    symbol: "U_ref",
    dimension: "voltage",
    words: "Level to set with that resistor; 2.5 V is aimed at where none is given.",
    formula: "U = I_limit·R_b/N",
    inputs: ["drive.overCurrentLimit", "drive.currentTransformer.comparatorVoltage"],
  }),
];

export const DRIVE_RESULTS: readonly ResultEntry[] = [
  ...SUPPLY_RESULTS,
  ...SWITCH_RESULTS,
  ...COMMUTATION_RESULTS,
  ...SENSE_RESULTS,
];
