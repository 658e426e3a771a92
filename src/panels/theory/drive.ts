import { cite, plain } from "../../evaluation/register/source";
import type { TheorySection } from "./section";

export const SUPPLY: TheorySection = {
  id: "supply",
  title: "Supply",
  models: [
    {
      title: "Mains, rectifier and reservoir",
      words:
        "One loop of source resistance and inductance, ideal diodes and the reservoir, under a load of constant mean power, is stepped through the mains' cycles until it repeats. A doubler charges one half of its reservoir in each half cycle; three phases are taken as their six pulses with two lines in the loop.",
      equations: ["L·di/dt + R·i = |u_mains| − u_bus while i > 0,  C·du_bus/dt = i − P/u_bus"],
      source: [plain("circuitTheory"), cite("schade1943", "", "the same by charts")],
      results: [
        "drive.busVoltage",
        "drive.averagePower",
        "drive.meanBusVoltage",
        "drive.lowestBusVoltage",
        "drive.busRipple",
        "drive.chargingCurrent",
        "drive.mainsCurrent",
        "drive.apparentPower",
        "drive.powerFactor",
        "drive.reservoirRmsCurrent",
        "drive.fuseHint",
      ],
    },
    {
      title: "Switching on and off",
      words:
        "Inrush is the step response of source and empty reservoir at the mains' crest; the pre-charge resistor dissipates as much energy as the reservoir then holds. The discharge resistor brings the bus to 60 V in the time given: wait that long, and measure before touching.",
      equations: ["t = RC·ln(U_bus/60 V),  W = ½·C·U²"],
      source: [plain("circuitTheory"), cite("iec61010", "6.3.1", "60 V")],
      results: [
        "drive.inrushCurrent",
        "drive.prechargeCurrent",
        "drive.prechargeTime",
        "drive.prechargeEnergy",
        "drive.reservoirEnergy",
        "drive.dischargeTime",
        "drive.dischargePower",
      ],
    },
  ],
  checkedBy: [],
};

export const PARTS: TheorySection = {
  id: "parts",
  title: "Bank, switches and current limit",
  models: [
    {
      title: "Stress of the bank",
      words:
        "Equal units share voltage and current. RMS is taken over bursts and pauses; the dielectric heats by its dissipation factor at the running frequency.",
      equations: ["I = √(f_rep·∫ i² dt),  P = I²·tan δ/(2πf·C)"],
      source: [plain("circuitTheory"), plain("dataSheet", "limits of the unit")],
      results: [
        "tank.unitPeakVoltage",
        "tank.unitRmsVoltage",
        "tank.unitPeakCurrent",
        "tank.unitRmsCurrent",
        "tank.loss",
        "tank.voltageMargin",
        "tank.peakCurrentMargin",
        "tank.rmsCurrentMargin",
      ],
    },
    {
      title: "Heat in the switches",
      words:
        "Each half cycle of the burst heats the device that carries it: conduction along its on-state line, turn-off by the current that it switches. Every element of the Foster network is a first-order system and is stepped exactly; a burst repeated indefinitely is a geometric series.",
      equations: ["W = ∫ (U₀·i + r·i²) dt + Σ e_off·i_off·U/U_test", "Z_th(t) = Σ R_k·(1 − e^(−t/τ_k))"],
      source: [cite("iec60747", "", "transient thermal impedance")],
      results: [
        "drive.junctionTemperature",
        "drive.meanJunctionTemperature",
        "drive.junctionRise",
        "drive.junctionMargin",
        "drive.switchPower",
        "drive.conductionEnergy",
        "drive.turnOffEnergy",
        "drive.turnOffCurrent",
        "drive.commutationCurrent",
        "drive.switchPeakCurrent",
        "drive.gatePeakCurrent",
        "drive.gatePower",
      ],
    },
    {
      title: "Lead of the comparator",
      words:
        "The comparator senses the current plus a fraction of its slope, so its zero precedes the current's. One pair of switches turns off a delay later, and the other turns on a dead time after that: delay and dead time together should end at the current's zero.",
      equations: ["t_lead = atan(ωτ)/ω,  turn-off at the zero: τ = tan(ω·delay)/ω"],
      symbols: "τ lead time, ω angular running frequency.",
      source: [plain("circuitTheory", "phase of a sine and its derivative")],
      results: [
        "drive.turnOffAdvance",
        "drive.leadAtZero",
        "drive.leadAcrossDeadTime",
        "drive.longestDeadTime",
      ],
    },
    {
      title: "Current transformers",
      words:
        "A chain of transformers divides the primary current by the product of their turns into a burden; each core carries the voltage of the stages after it.",
      equations: ["u = I·R_b/(N₁·N₂),  B = U/(2πf·N·A)"],
      source: [plain("circuitTheory", "ampere-turns and induction")],
      results: [
        "drive.transformerRatio",
        "drive.limitVoltageAtComparator",
        "drive.peakVoltageAtComparator",
        "drive.burdenPower",
        "drive.coreFluxDensity",
      ],
    },
  ],
  checkedBy: [],
};
