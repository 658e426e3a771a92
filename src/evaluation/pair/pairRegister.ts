/** The pair's results: a separate register, because they belong to two designs. */
import type { Dimension } from "../../units/dimension";
import type { ResultEntry } from "../register/entry";
import { cite, plain } from "../register/source";

const FIRST_ORDER =
  "Charges and currents of each coil alone; walls and ceiling left out, both wound in the same sense.";
const ERROR = "First order in the coupling: the error grows with its square.";
const MODES = [cite("landauLifshitz", "§ 23")];

type Side = "left" | "right";

const OTHER: Record<Side, Side> = { left: "right", right: "left" };

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function besideEntries(side: Side): ResultEntry[] {
  const label = capitalised(side);
  return [
    {
      id: `pair.${side}.resonanceBeside`,
      label: `${label} coil beside the other`,
      symbol: "f′",
      dimension: "frequency",
      words: "Resonance that its primary sees while both play at the same top voltage, in the set phase.",
      formula: "f′² = f²·(1 + kₑ·w)/(1 + kₘ·w)",
      inputs: ["secondary.resonance"],
      source: MODES,
      validity: FIRST_ORDER,
      accuracy: ERROR,
    },
    {
      id: `pair.${side}.retunedTap`,
      label: `${label} tap, retuned`,
      symbol: "n′",
      dimension: "turns",
      words: "The tap that keeps the tuning aim beside the other coil: the aim moves as the resonance does.",
      formula: "f_p(n′) = f_aim·f′/f",
      inputs: ["primary.tap", "tuning.suggestedTap"],
      source: [plain("ownModel", "the primary's own resonance against its turns")],
      validity: FIRST_ORDER,
      accuracy: "That of the suggested tap.",
    },
    {
      id: `pair.${side}.topVoltage`,
      label: `${label} top voltage`,
      symbol: "V",
      dimension: "voltage",
      words: "Peak in a burst at its design's on-time, with its spark.",
      formula: "V = max |v(t)|",
      inputs: ["burst.peakTopVoltage"],
      source: [plain("ownModel", "the simulated burst")],
      validity: "The coil alone, without the voltage induced by the other.",
      accuracy: "That of the burst.",
    },
    {
      id: `pair.${side}.breakoutVoltage`,
      label: `${label} breakout`,
      symbol: "V_b",
      dimension: "voltage",
      words: "Typical value at the breakout point if there is one, otherwise that of the top load's surface.",
      formula: "V_b = E_c/(E/V)",
      inputs: ["topLoad.breakoutVoltage", "topLoad.breakoutVoltageAtPoint.typical"],
      source: [cite("peek1929", "ch. 4")],
      validity: "The coil alone, without the field of the other.",
      accuracy: "Within a factor of 1.5 at a point.",
    },
  ];
}

function induced(
  side: Side,
  name: string,
  label: string,
  symbol: string,
  dimension: Dimension,
  formula: string,
): ResultEntry {
  return {
    id: `pair.${side}.induced.${name}`,
    label: `${capitalised(side)}, idle: ${label}`,
    symbol,
    dimension,
    words: `Peak while the ${OTHER[side]} coil bursts at its design's on-time and this one's bridge is off: its fundamental, driven by the other's top voltage.`,
    formula,
    inputs: ["interrupter.onTime", "secondary.resonance", "secondary.qualityFactor"],
    source: [cite("landauLifshitz", "§ 22–23"), plain("ownModel", "wave of the simulated burst")],
    validity:
      "No reaction on the burst: holds while the idle coil takes less than a tenth of its net energy and the idle primary stays below its bridge's voltage. Beyond that it is an upper bound, at close spacing several times too high.",
    accuracy: "About 20 % within that, from the couplings' error and from using the fundamental alone.",
  };
}

function inducedEntries(side: Side): ResultEntry[] {
  return [
    induced(side, "voltage", "top voltage", "V₂", "voltage", "n̈₂ + ω₂/Q₂·ṅ₂ + ω₂²·n₂ = −kₑω₁ω₂·n₁ − kₘ·n̈₁"),
    induced(side, "baseCurrent", "base current", "I₂", "current", "I₂ = V₂·(I/V)₂"),
    induced(side, "primaryVoltage", "primary voltage", "V_p", "voltage", "V_p = k·√(L_p/Lₛ)·V₂"),
  ];
}

/** Left and right of each in turn. */
function sideBySide(entries: (side: Side) => ResultEntry[]): ResultEntry[] {
  const right = entries("right");
  return entries("left").flatMap((entry, index) => [entry, right[index]]);
}

export const PAIR_RESULTS: readonly ResultEntry[] = [
  {
    id: "pair.coupling.magnetic",
    label: "Magnetic coupling",
    symbol: "kₘ",
    dimension: "percent",
    words: "Mutual inductance of the two fundamentals; negative if both are wound in the same sense.",
    formula: "kₘ = M/√(L₁L₂)",
    inputs: ["secondary.inductance", "secondary.profile"],
    source: [cite("grover1946", "ch. 20", "Neumann's integral between parallel axes")],
    validity: FIRST_ORDER,
    accuracy: "3e-3 of the model at 1.5 winding lengths.",
  },
  {
    id: "pair.coupling.capacitive",
    label: "Capacitive coupling",
    symbol: "kₑ",
    dimension: "percent",
    words: "Interaction energy of both coils' solved charges over the product of their own.",
    formula: "kₑ = P·√(C₁C₂)",
    inputs: ["topLoad.elements", "secondary.profile"],
    source: [cite("maxwell1873", "art. 86–87")],
    validity: FIRST_ORDER,
    accuracy: ERROR,
  },
  {
    id: "pair.split.inPhase",
    label: "Resonance in phase",
    symbol: "f₊",
    dimension: "frequency",
    words: "Natural frequency of the pair with both top voltages in phase.",
    formula: "det(ω² − ω_i²) = 0",
    inputs: ["secondary.resonance"],
    source: MODES,
    validity: `Without loss. ${FIRST_ORDER}`,
    accuracy: ERROR,
  },
  {
    id: "pair.split.opposed",
    label: "Resonance opposed",
    symbol: "f₋",
    dimension: "frequency",
    words: "Natural frequency of the pair with the top voltages in antiphase.",
    formula: "det(ω² − ω_i²) = 0",
    inputs: ["secondary.resonance"],
    source: MODES,
    validity: `Without loss. ${FIRST_ORDER}`,
    accuracy: ERROR,
  },
  ...sideBySide(besideEntries),
  ...sideBySide(inducedEntries),
  {
    id: "pair.gap",
    label: "Clearance between top loads",
    symbol: "g",
    dimension: "length",
    words: "Distance between the nearest points of both top loads, without breakout points.",
    formula: "g = √(Δx² + Δz²) − r₁ − r₂",
    inputs: ["topLoad.elements"],
    source: [plain("geometry")],
    validity: "Round elements.",
    accuracy: "That of the dimensions.",
  },
  {
    id: "pair.voltageBetween",
    label: "Voltage between top loads",
    symbol: "V",
    dimension: "voltage",
    words: "Both at the peak of their bursts, in the set phase; at breakout voltage if there is no burst.",
    formula: "V = |V₁ ∓ V₂|",
    inputs: ["burst.peakTopVoltage"],
    source: [plain("definition")],
    validity: "Both at their peak at the same time.",
    accuracy: "That of the bursts.",
  },
  {
    id: "pair.meanField",
    label: "Mean field in the gap",
    symbol: "E",
    dimension: "fieldStrength",
    words: "The voltage between the top loads over their gap.",
    formula: "E = V/g",
    inputs: ["topLoad.elements"],
    source: [plain("definition")],
    validity: "The field at the surfaces is higher.",
    accuracy: "That of the bursts.",
  },
  {
    id: "pair.sparkReach",
    label: "Reach of both sparks",
    symbol: "ℓ",
    dimension: "length",
    words: "The spark lengths of both designs, end to end.",
    formula: "ℓ = ℓ₁ + ℓ₂",
    inputs: ["spark.length"],
    source: [plain("definition")],
    validity: "Sparks of a burst at its design's setting; common practice, no source.",
    accuracy: "An estimate.",
  },
];
