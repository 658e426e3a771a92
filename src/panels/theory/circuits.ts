import { cite, plain } from "../../evaluation/register/source";
import type { TheorySection } from "./section";

export const LOSSES: TheorySection = {
  id: "losses",
  title: "Losses",
  models: [
    {
      title: "Skin effect of a round wire",
      words: "The field inside an isolated round wire is known exactly.",
      equations: ["Z/R_dc = (z/2)·J₀(z)/J₁(z),  z = (1 − j)·d/(2δ),  δ = √(2ρ/(ωμ₀))"],
      symbols: "J Bessel functions, d wire diameter, δ skin depth, ρ resistivity.",
      source: [cite("smythe1950", "sec. 10.04"), cite("ramo", "sec. 4.5")],
      results: ["secondary.dcResistance"],
    },
    {
      title: "Proximity in a single layer",
      words:
        "In a row of equal wires each wire responds to the fields of its neighbours and of the rest of the coil as a cylinder does, multipole by multipole; all are coupled. The transverse field comes from the mode's own current profile. Tables of measured coils apply to thick wire and short coils; for a long, close winding of thin wire they overstate the loss.",
      equations: [
        "aₙ = sₙ ± Σ C(n + k − 1, n)·2ζ(n + k)·(R/p)ⁿ⁺ᵏ·τₖ·aₖ",
        "τₙ = Jₙ₊₁(z)/Jₙ₋₁(z),  loss per length = −(πωn/μ₀)·|aₙ|²·Im τₙ",
      ],
      symbols:
        "aₙ incident multipole, sₙ that of the source, C binomial coefficient, ζ Riemann's zeta function, p pitch.",
      source: [cite("rayleigh1892"), cite("smythe1950", "sec. 10.05"), cite("butterworth1922")],
      results: ["secondary.acResistance", "secondary.qualityFactor"],
    },
    {
      title: "The tube of the primary",
      words:
        "The surface current from the field solution heats a wall of finite thickness with the field on one side; unused turns add the loss of their eddy currents.",
      equations: ["R_s = (ρ/δ)·(sinh 2x + sin 2x)/(cosh 2x − cos 2x),  x = wall/δ"],
      source: [cite("ramo", "sec. 3.17", "conductor of finite thickness")],
      results: ["primary.acResistance", "primary.qualityFactor"],
    },
  ],
  checkedBy: ["Skin effect", "Proximity effect", "Wire"],
};

export const COUPLED_CIRCUIT: TheorySection = {
  id: "coupled-circuit",
  title: "Coupled circuit",
  models: [
    {
      title: "Response to a sine",
      words:
        "The primary loop, the first modes of the secondary and the spark load form one linear network. Each mode is normalised to the voltage at the top, so that the top voltage is the sum of the modes and the spark loads every mode. The natural frequencies are the zeros of the network's determinant, found by Muller's method.",
      equations: [
        "(R + sL + 1/sC)·I + Σ sMₙ·Iₙ = V",
        "(Rₙ + sLₙ + 1/sCₙ)·Iₙ + sMₙ·I = spark's part,  V_top = Σ Vₙ",
      ],
      symbols: "s complex frequency, Mₙ mutual inductance to mode n.",
      source: [plain("circuitTheory", "mesh analysis"), cite("terman1943", "sec. 3"), cite("muller1956")],
      results: [
        "response.lowerPole",
        "response.upperPole",
        "response.loadedLowerPole",
        "response.loadedUpperPole",
        "secondary.loadedResonance",
        "response.curve.*.topVoltagePerVolt",
        "response.curve.*.inputImpedance.magnitude",
        "response.curve.*.inputImpedance.phase",
      ],
    },
    {
      title: "One burst in time",
      words:
        "Between two switching instants the system is linear and is propagated exactly; the current's zeros, the limit, the end of the on-time and the diodes' commutation are located within a step, never rounded to one. The energies of source, losses, spark and storage are summed and must balance.",
      equations: [
        "x(t + h) = exp(A·h)·x(t)",
        "L·di/dt + Σ Mₙ·diₙ/dt = v_bridge − R·i − v_C,  C·dv_C/dt = i",
        "Mₙ·di/dt + Lₙ·diₙ/dt = −Rₙ·iₙ − uₙ,  Cₙ·duₙ/dt = iₙ − i_spark",
      ],
      symbols:
        "x primary current, bank and rail voltage, currents and voltages of the modes, spark; A their rates.",
      source: [cite("higham2008", "sec. 2.1 and 10.3")],
      results: [
        "burst.peakPrimaryCurrent",
        "burst.peakTopVoltage",
        "burst.peakBaseCurrent",
        "burst.peakBankVoltage",
        "burst.limitTrips",
        "burst.driveEnd",
        "burst.primaryEnd",
        "burst.reservoirSag",
        "burst.runningFrequency",
        "burst.firstBeatMinimum",
        "burst.energy.supplied",
        "burst.energy.returned",
        "burst.energy.spark",
        "burst.energy.primary",
        "burst.energy.bank",
        "burst.energy.switches",
        "burst.energy.secondary",
        "burst.energy.stored",
        "burst.energy.imbalance",
        "burst.energy.turnOff",
        "burst.windingGradient",
        "burst.gapField",
      ],
    },
    {
      title: "Spark load",
      words:
        "A spark is a resistance and a capacitance at the top, in series or parallel. A growing spark breaks out at the top load's breakout voltage and lengthens at a constant rate; its capacitance is proportional to its length. Defaults are common practice, no source.",
      equations: ["C_spark ∝ length(t),  length(t) = min(rate·(t − t_breakout), full length)"],
      source: [plain("commonPractice")],
      results: [],
    },
  ],
  checkedBy: [
    "Coupled response",
    "Burst at a fixed frequency",
    "Burst with feedback from the current's zeros",
  ],
};

export const TUNING: TheorySection = {
  id: "tuning",
  title: "Tuning",
  models: [
    {
      title: "Suggested tap",
      words:
        "The primary's resonance falls as the tap moves out. The suggested tap is where it meets the target frequency, found by bisection; its band is the effect of the winding's tolerance. On the bench the tap is trimmed from there, with the power off and the bank discharged.",
      equations: [],
      source: [plain("ownModel", "root search on the models above")],
      results: [
        "tuning.targetResonance",
        "tuning.suggestedTap",
        "tuning.suggestedTapBand.low",
        "tuning.suggestedTapBand.high",
        "tuning.detuning",
        "tuning.curve.*.primaryResonance",
      ],
    },
  ],
  checkedBy: [],
};
