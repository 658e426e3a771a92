/** The register of the curves along a score. */
import type { ScoreQuantity } from "../../calc/music/worstMoments";
import type { ResultEntry } from "../register/entry";
import { cite, plain } from "../register/source";

const BURSTS =
  "Every burst alone, at a full bus, with the design's spark; ringing into the next burst is left out.";
const BURST_ACCURACY =
  "That of the burst, overestimated by about 5 %, at most 15 %: each on-time is assumed to end at its worst phase.";

const RECTIFIER = plain("circuitTheory", "rectifier stepped through the mains' cycles");

export const SCORE_RESULTS: Record<ScoreQuantity, ResultEntry> = {
  duty: {
    id: "score.duty",
    label: "Duty",
    symbol: "D",
    dimension: "percent",
    words: "On-time over the window that ends at each moment.",
    formula: "D = Σ t/W",
    inputs: ["interrupter.dutyLimit", "interrupter.dutyWindow"],
    source: [plain("definition")],
    validity: "Windows of the interrupter, for long scores a whole number of them.",
    accuracy: "Exact for the schedule.",
  },
  power: {
    id: "score.power",
    label: "Power from the reservoir",
    symbol: "P",
    dimension: "power",
    words: "Energy that the bursts in the window take from the reservoir, divided by the window.",
    formula: "P = Σ E(t)/W",
    inputs: ["interrupter.longestOnTime", "drive.reservoirCapacitance"],
    source: [plain("ownModel", "energy balance of the simulated burst")],
    validity: BURSTS,
    accuracy: BURST_ACCURACY,
  },
  mainsCurrent: {
    id: "score.mainsCurrent",
    label: "Mains current",
    symbol: "I",
    dimension: "current",
    words: "RMS current in a line of the mains under the mean power of the window.",
    formula: "L·di/dt = u − R·i − U,  C·dU/dt = i − P/U",
    inputs: ["drive.supply.sourceResistance", "drive.supply.sourceInductance", "drive.supply.circuitCurrent"],
    source: [RECTIFIER],
    validity: "Means over a quarter of a second and more: single charging pulses are higher.",
    accuracy: "1 % of the supply's model.",
  },
  busVoltage: {
    id: "score.busVoltage",
    label: "Bus voltage, minimum",
    symbol: "U",
    dimension: "voltage",
    words:
      "Minimum bus voltage under the mean power, with the lag of the reservoir's capacitance, less the deepest sag of a burst.",
    formula: "U = U(P) − ΔU",
    inputs: ["drive.reservoirCapacitance", "drive.supply.sourceResistance"],
    source: [RECTIFIER, plain("circuitTheory", "lag of first order")],
    validity: "The limit, three quarters of the no-load voltage, is common practice, no source.",
    accuracy: "2 % of the supply's model.",
  },
  junctionTemperature: {
    id: "score.junctionTemperature",
    label: "Junction, highest",
    symbol: "T",
    dimension: "temperature",
    words:
      "The device under most load, from burst to burst: the heat that earlier bursts have left plus the burst's own rise.",
    formula: "T = T_case + Σ Rᵢ/τᵢ·Σ E·e^(−Δt/τᵢ) + ΔT",
    inputs: ["drive.switch.caseTemperature", "drive.switch.junctionLimit"],
    source: [cite("iec60747", "", "transient thermal impedance as a Foster network")],
    validity: "The case held at its temperature; each burst's last turn-off at its worst phase.",
    accuracy:
      "Overestimated by about 10 % of the rise; by more if the last turn-off causes most of the heat.",
  },
  bankTemperature: {
    id: "score.bankTemperature",
    label: "Bank, one unit",
    symbol: "T_C",
    dimension: "temperature",
    words: "One unit of the bank, warmed by its dielectric loss and cooled by still air.",
    formula: "T_C = T_air + ∫ P·e^(−Δt/τ)·R/τ dt",
    inputs: ["tank.unit.dissipationFactor", "air.temperature"],
    source: [plain("orderOfMagnitude", "assuming a case of 50 cm² at 10 W/(m²K) and 30 J/K")],
    validity: "A unit by itself: one among many is warmer.",
    accuracy: "An order of magnitude.",
  },
};
