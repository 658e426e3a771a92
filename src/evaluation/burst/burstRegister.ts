/** Results of one burst in time; the burst without the spark has the same entries. */

import type { ResultEntry } from "../register/entry";
import { cite, plain } from "../register/source";
import { BURST_SERIES, type BurstEntry } from "./burstSeriesRegister";

const SOURCE = [cite("higham2008", "sec. 2.1 and 10.3", "state space, exact between the switchings")];
const VALIDITY =
  "One burst from rest at the bus's no-load voltage; ideal gates, one on-state line for switches and diodes.";
const ACCURACY = "1e-3 of the network; a real spark is not a fixed load: 10–20 % in the spark's energy.";
const INPUTS = [
  "drive.busVoltage",
  "interrupter.onTime",
  "primary.inductance",
  "tank.capacitance",
  "coupling.circuit",
  "drive.commutation",
  "drive.overCurrentLimit",
  "spark",
];

const OUTCOME: readonly BurstEntry[] = [
  {
    id: "peakPrimaryCurrent",
    label: "Peak primary current",
    symbol: "î",
    dimension: "current",
    words: "Largest magnitude of the primary current in the burst, including after the drive has ended.",
    formula: "î = max |i(t)|",
  },
  {
    id: "peakTopVoltage",
    label: "Peak top voltage",
    symbol: "v̂_top",
    dimension: "voltage",
    words: "Largest magnitude of the top load's voltage: the sum of the modes' voltages.",
    formula: "v̂_top = max |Σ v_n(t)|",
  },
  {
    id: "peakBaseCurrent",
    label: "Peak base current",
    symbol: "î_base",
    dimension: "current",
    words: "Largest current at the base of the winding, which the RF earth carries.",
    formula: "î_base = max |Σ b_n·i_n(t)|, b_n a mode's base current over its circuit current",
  },
  {
    id: "peakBankVoltage",
    label: "Peak bank voltage",
    symbol: "v̂_C",
    dimension: "voltage",
    words: "Largest voltage across the whole bank of capacitors.",
    formula: "v̂_C = max |v_C(t)|",
  },
  {
    id: "limitTrips",
    label: "Current limit reached after",
    symbol: "t_lim",
    dimension: "time",
    words: "When the primary current first reaches the over-current limit; none if it never does.",
    formula: "|i(t_lim)| = I_limit",
  },
  {
    id: "driveEnd",
    label: "Drive ends after",
    symbol: "t_d",
    dimension: "time",
    words: "When the last pair of switches turns off: at the end of the on-time, or after the limit.",
    formula: "t_d = min(t_on, t_lim + delay)",
  },
  {
    id: "primaryEnd",
    label: "Primary current ends after",
    symbol: "t_end",
    dimension: "time",
    words: "When the diodes have stopped conducting and no more current flows in the primary.",
    formula: "i(t > t_end) = 0",
  },
  {
    id: "reservoirSag",
    label: "Reservoir sag in a burst",
    symbol: "ΔU",
    dimension: "voltage",
    words: "Largest drop of the reservoir's voltage within the burst, without recharging from the mains.",
    formula: "ΔU = U_bus − min u_R(t)",
    inputs: ["drive.reservoirCapacitance", "burst.energy.supplied"],
  },
  {
    id: "runningFrequency",
    label: "Running frequency",
    symbol: "f_run",
    dimension: "frequency",
    words: "Cycles of the primary current while it is driven, divided by their duration.",
    formula: "f_run = n/Σ T_k",
  },
  {
    id: "firstBeatMinimum",
    label: "First beat minimum after",
    symbol: "t_min",
    dimension: "time",
    words:
      "When the envelope of the primary current has its first minimum after the first rise: the energy has moved to the secondary. None if it only rises.",
    formula: "first k with î_k < î_(k−1) and î_k ≤ î_(k+1)",
  },
];

const ENERGY: readonly BurstEntry[] = [
  {
    id: "supplied",
    label: "Energy supplied",
    symbol: "W_in",
    dimension: "energy",
    words: "Energy that the burst takes from the reservoir.",
    formula: "W_in = ∫ u·i dt while u·i > 0",
  },
  {
    id: "returned",
    label: "Energy returned",
    symbol: "W_back",
    dimension: "energy",
    words: "Energy that flows back into the reservoir through the diodes.",
    formula: "W_back = −∫ u·i dt while u·i < 0",
  },
  {
    id: "spark",
    label: "Energy into the spark",
    symbol: "W_spark",
    dimension: "energy",
    words: "Energy into the resistance of the spark load, including the ring-down.",
    formula: "W_spark = ∫ R_s·i_s² dt (series) or ∫ v_top²/R_s dt (parallel)",
  },
  {
    id: "primary",
    label: "Energy into the primary",
    symbol: "W_p",
    dimension: "energy",
    words: "Loss in the primary's conductor.",
    formula: "W_p = R_tube·∫ i² dt",
  },
  {
    id: "bank",
    label: "Energy into the bank",
    symbol: "W_C",
    dimension: "energy",
    words: "Loss in the dielectric of the bank.",
    formula: "W_C = tan δ/(ωC)·∫ i² dt",
  },
  {
    id: "switches",
    label: "Energy into the switches, conduction",
    symbol: "W_sw",
    dimension: "energy",
    words: "Conduction of switches and diodes in the path.",
    formula: "W_sw = n·∫ (U₀·|i| + r·i²) dt",
  },
  {
    id: "secondary",
    label: "Energy into the secondary",
    symbol: "W_s",
    dimension: "energy",
    words: "Loss in the winding, all modes.",
    formula: "W_s = Σ R_n·∫ i_n² dt",
  },
  {
    id: "stored",
    label: "Energy still stored",
    symbol: "W_L,C",
    dimension: "energy",
    words: "Energy in coils and capacitances at the end of the balance, without the reservoir.",
    formula: "W = ½Σ L·i² + ½Σ C·v² + Σ M·i·i_n",
  },
  {
    id: "imbalance",
    label: "Error of the energy balance",
    symbol: "ΔW",
    dimension: "energy",
    words:
      "Energy supplied minus energy returned minus all other parts: a measure of the computation's own error.",
    formula: "ΔW = W_in − W_back − Σ W",
    accuracy: "Below 0.1 % of the energy supplied.",
  },
  {
    id: "turnOff",
    label: "Turn-off energy of the switches",
    symbol: "W_off",
    dimension: "energy",
    words:
      "Loss of all turn-offs, from the current at each; not part of the balance, because the network does not include it.",
    formula: "W_off = Σ E_off/A·i·U/U_test",
    inputs: ["drive.switch.turnOffEnergyPerAmpere", "drive.switch.turnOffTestVoltage", "drive.busVoltage"],
    accuracy: "As the data sheet's line: 20–30 %.",
  },
];

function entry(path: string, state: string, own: BurstEntry): ResultEntry {
  return {
    inputs: INPUTS,
    source: SOURCE,
    validity: VALIDITY,
    accuracy: ACCURACY,
    ...own,
    id: `${path}.${own.id}`,
    label: `${own.label}${state}`,
  };
}

function outcome(path: string, state: string): ResultEntry[] {
  const energy = ENERGY.map((own) => ({ ...own, id: `energy.${own.id}` }));
  return [...OUTCOME, ...energy, ...BURST_SERIES].map((own) => entry(path, state, own));
}

export const BURST_RESULTS: readonly ResultEntry[] = [
  ...outcome("burst", ""),
  ...outcome("burst.unloaded", ", no spark"),
  {
    id: "burst.windingGradient",
    label: "Gradient along the winding in a burst",
    symbol: "E_w",
    dimension: "fieldStrength",
    words: "Steepest voltage along the winding in the fundamental, at the peak top voltage.",
    formula: "E_w = max |dv/dz|·v̂_top",
    inputs: ["secondary.maximumGradientPerVolt", "burst.peakTopVoltage"],
    source: [plain("ownModel", "profile of the fundamental")],
    validity: "Voltage profile of the fundamental alone.",
    accuracy: "5 %; sparks that race along the winding are not included.",
  },
  {
    id: "burst.gapField",
    label: "Mean field from primary to winding",
    symbol: "E_gap",
    dimension: "fieldStrength",
    words:
      "Peak bank voltage and the winding's voltage at that height, over the air between a turn of the primary and the winding; the worst turn. Every turn is assumed at the primary's full voltage, stepped up if unused turns do so.",
    formula: "E_gap = max (v̂_C·max(1, free end) + v̂_top·v(z))/gap",
    inputs: [
      "burst.peakBankVoltage",
      "burst.peakTopVoltage",
      "secondary.profile",
      "primary.freeEndVoltage",
      "primary.innerRadius",
    ],
    source: [plain("definition"), plain("ownModel", "full voltage on every turn, a cautious simplification")],
    validity: "Straight gaps in air.",
    accuracy: "An upper bound of the mean field; the field at an edge is higher.",
  },
];
